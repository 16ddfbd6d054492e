/** The pages and the libraries they load. */
module org.hosewright.web {
    requires static org.jspecify;
}
