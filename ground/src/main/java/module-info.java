/** Where the hose goes: tracks, distance, rise, coupling marks, stretch estimates; values and physics only. */
module org.hosewright.ground {
    requires static org.jspecify;
    requires transitive org.hosewright.hydraulics;
    requires GeographicLib.Java;

    exports org.hosewright.ground.stretch;
    exports org.hosewright.ground.terrain;
    exports org.hosewright.ground.track;
    exports org.hosewright.ground.walk;
}
