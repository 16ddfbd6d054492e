package org.hosewright.ground.walk;

import org.hosewright.ground.track.TrackMark;

/** A mark that a person made, at its place on the way. */
public record WalkedMark(TrackMark mark, WayPoint place) {}
