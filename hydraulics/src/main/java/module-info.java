/** Water in hose: quantities, equipment, lays, limits and reach. */
module org.hosewright.hydraulics {
    requires static org.jspecify;

    exports org.hosewright.hydraulics.demand;
    exports org.hosewright.hydraulics.equipment;
    exports org.hosewright.hydraulics.error;
    exports org.hosewright.hydraulics.foam;
    exports org.hosewright.hydraulics.lay;
    exports org.hosewright.hydraulics.limit;
    exports org.hosewright.hydraulics.line;
    exports org.hosewright.hydraulics.method;
    exports org.hosewright.hydraulics.network;
    exports org.hosewright.hydraulics.network.law;
    exports org.hosewright.hydraulics.network.sparse;
    exports org.hosewright.hydraulics.order;
    exports org.hosewright.hydraulics.profile;
    exports org.hosewright.hydraulics.quantity;
    exports org.hosewright.hydraulics.reach;
    exports org.hosewright.hydraulics.stream;
    exports org.hosewright.hydraulics.supply;
    exports org.hosewright.hydraulics.working;
}
