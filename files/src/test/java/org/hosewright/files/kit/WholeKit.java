package org.hosewright.files.kit;

/** A kit file with every kind of entry that the format has. */
final class WholeKit {
    static final String TEXT = """
            # Everything that a kit can hold.
            format: 1
            company: "Brindle Falls Fire Company: Station 2"
            zone: America/New_York
            units: us
            x-colour-code: { attack: red }
            crew: { reaction: { 1: 60 lbf, 2: 75 lbf, 3: 95 lbf } }
            hoses:
              # the new batch
              attack-175: { diameter: 1 3/4 in, section: 50 ft, loss: 9.19 ± 0.21 psi / 100 ft @ 100 gpm, basis: test drill-night, service-test: 300 psi, tested: 2026-04-11, made: 2019, x-rack: 4 }
              leader-3: # three inch
                diameter: 3 in   # nominal
                section: 50 ft
                loss: 23.8 psi / 100 ft @ 161 gpm
            nozzles:
              seven-eighths: { kind: smooth-bore, bore: 7/8 in, at: 50 psi, gauged: 2026-05-12, flow: 101.5 +- 0.9 % }
              fog-150:       { kind: fog, rated: 150 gpm @ 75 psi, most: 200 psi }
              slug-fog:      { kind: break-apart, settings: { fog: { kind: fog, rated: 150 gpm @ 75 psi }, slug: { kind: smooth-bore, bore: 15/16 in, at: 50 psi } } }
              ring-fog:      { kind: selectable, settings: { narrow: { kind: fog, rated: 95 gpm @ 100 psi }, wide: { kind: fog, rated: 125 gpm @ 100 psi } } }
              auto-100:      { kind: automatic, holds: 100 psi, from: 60 gpm, to: 200 gpm }
            appliances:
              gated-wye: { loss: 0.55 psi @ 100 gpm, per: leg, rated: 250 psi }
              monitor: { loss: { rule: 10 psi, from: 350 gpm } }
            engines:
              engine-41:
                pump: { rated: 1500 gpm, ceiling: 250 psi }
                tank: 750 gal
                gauge: gauge-a
                discharges: { crosslay-1: { size: 2 in, loss: 2.06 ± 1.0 psi @ 100 gpm, basis: test drill-night }, rear-3: {} }
            instruments:
              gauge-a: { kind: pressure-gauge, range: 400 psi, accuracy: 0.5 % of range, tap: before piping, least-count: 2 psi, offset: -1.2 ± 0.8 psi, calibrated: 2026-03-01 }
              gauge-b: { kind: pressure-gauge, range: 200 psi, accuracy: 0.5 % of range, tap: pitot }
              gauge-c: { kind: pressure-gauge, accuracy: 1 % of reading, tap: side }
              gauge-d: { kind: pressure-gauge, range: 30 bar, accuracy: 1 % of range, tap: discharge }
              meter-1: { kind: flow-meter, accuracy: 5 % of reading }
            packages:
              crosslay-1-200: { engine: engine-41, discharge: crosslay-1, hose: 4 x attack-175, nozzle: seven-eighths, crew: 2, target: 161 gpm, least: 150 gpm, ordered: 105 psi }
              crosslay-1-300: { engine: engine-41, discharge: crosslay-1, hose: 4 x attack-175 + 125 ft leader-3, nozzle: slug-fog, setting: slug }
            rule: { tip: 50 psi, per: 18 psi / 100 ft }
            reserve: 50 ft
            evidence: { drill-night: { date: 2026-05-12, readings: 8, longest: 750 ft, correlation: { attack-175/crosslay-1: -0.8 } } }
            """;

    private WholeKit() {}
}
