package org.hosewright.evidence.night;

import java.util.Optional;

/** The instruments a reading was taken with, by id; absent ones were not named. */
public record ReadWith(Optional<String> pumpGauge, Optional<String> tipGauge, Optional<String> meter) {}
