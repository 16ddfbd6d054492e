/** Water in hose: quantities, equipment, lays, limits and reach. */
module org.hosewright.hydraulics {
    requires static org.jspecify;
}
