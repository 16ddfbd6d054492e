/** Water in hose: quantities, equipment, lays, limits and reach. */
module org.hosewright.hydraulics {
    requires static org.jspecify;

    exports org.hosewright.hydraulics.equipment;
    exports org.hosewright.hydraulics.error;
    exports org.hosewright.hydraulics.quantity;
}
