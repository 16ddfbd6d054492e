package org.hosewright.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random lays with every further piece: joins, standpipes, reducers, eductors, monitors, sprinklers, gates part shut,
 * damage, a pump at fixed speed, and every kind of supply.
 */
final class PieceQuestions {
    private final Random random;
    private int named;

    PieceQuestions(long seed) {
        random = new Random(seed);
    }

    List<String> list(int count) {
        List<String> questions = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            named = 0;
            boolean damaged = random.nextInt(4) == 0;
            boolean fixed = random.nextInt(4) == 0;
            String at = fixed || damaged || random.nextBoolean()
                    ? "{\"pump\":\"150 psi\"}"
                    : "{\"flow\":\"" + number(40, 120) + " gpm\"}";
            String pump = fixed ? ",\"pump\":{\"at\":\"150 psi\",\"flow\":\"400 gpm\",\"rated\":\"1500 gpm\"}" : "";
            String supply = random.nextInt(3) == 0 ? "" : ",\"supply\":" + supply(2);
            questions.add("{\"lay\":{" + lines(random.nextBoolean(), damaged) + pump + supply + "},\"at\":" + at + "}");
        }
        return questions;
    }

    private String lines(boolean joined, boolean damaged) {
        if (!joined) {
            return "\"lines\":[" + line("one", leg("", damaged)) + "," + line("two", leg("", false)) + "]";
        }
        String into = "\"join\":\"deck\"}";
        String appliance = random.nextBoolean()
                ? "\"appliance\":{\"id\":\"siamese\",\"loss\":\"0.2 psi @ 100 gpm\",\"per\":\""
                        + (random.nextBoolean() ? "leg" : "total") + "\"},"
                : "";
        return "\"lines\":[" + line("one", chain(7, false) + into) + "," + line("two", chain(7, damaged) + into)
                + "],\"joins\":{\"deck\":{" + appliance + "\"leg\":" + leg("", false) + "}}";
    }

    private String line(String discharge, String leg) {
        return "{\"discharge\":{\"id\":\"" + discharge + "\",\"loss\":\"" + number(0, 1) + " psi @ 100 gpm\"},\"leg\":"
                + leg + "}";
    }

    private String leg(String inner, boolean damaged) {
        return chain(random.nextInt(9), damaged) + (inner.isEmpty() ? end() : inner) + "}";
    }

    private String chain(double rise, boolean damaged) {
        String amiss = !damaged
                ? random.nextInt(4) == 0 ? "\"gate\":\"" + number(1, 20) + " psi @ 100 gpm\"," : ""
                : random.nextBoolean() ? "\"burst\":2," : "\"kink\":\"10 psi @ 100 gpm\",";
        String loss = random.nextInt(4) == 0 ? "\"hazen-williams\":140" : "\"loss\":\"2 psi / 100 ft @ 100 gpm\"";
        return "{" + amiss + "\"hose\":[{\"id\":\"h" + named++ + "\",\"diameter\":\"2 1/2 in\",\"section\":\"50 ft\","
                + loss + ",\"length\":\"" + number(100, 300) + " ft\",\"rise\":\"" + rise + " ft\"}],";
    }

    private String end() {
        return switch (random.nextInt(6)) {
            case 0 -> "\"monitor\":{\"rise\":\"3 ft\",\"tips\":[" + tip() + "," + tip() + "]}";
            case 1 -> standpipe();
            case 2 ->
                "\"reducer\":{\"id\":\"r" + named++ + "\",\"holds\":\"" + number(30, 120) + " psi\",\"leg\":" + plain()
                        + "}";
            case 3 ->
                "\"eductor\":{\"id\":\"e" + named++
                        + "\",\"rated\":\"95 gpm @ 200 psi\",\"back-pressure\":\"65 %\",\"draws\":\"3 %\",\"leg\":"
                        + plain() + "}";
            case 4 -> "\"sprinklers\":{\"id\":\"s" + named++ + "\",\"k\":\"5.6 gpm\",\"heads\":3}";
            default -> "\"nozzle\":" + tip();
        };
    }

    private String standpipe() {
        return "\"standpipe\":{\"rise\":\"" + number(0, 40)
                + " ft\",\"loss\":\"1 psi @ 100 gpm\",\"posted\":\"175 psi\",\"floors\":["
                + "{\"id\":\"f4\",\"plain\":true,\"leg\":" + plain() + "},{\"id\":\"f5\",\"rise\":\"10 ft\"," + valve()
                + "\"leg\":"
                + plain()
                + "}]}";
    }

    private String valve() {
        return switch (random.nextInt(4)) {
            case 0 -> "\"reduces\":\"" + number(40, 110) + " psi\",";
            case 1 -> "\"set\":\"" + number(40, 110) + " psi\",";
            case 2 -> "\"restricts\":\"15 psi @ 100 gpm\",";
            default -> "\"plain\":true,";
        };
    }

    private String plain() {
        return chain(0, false) + "\"nozzle\":" + tip() + "}";
    }

    private String tip() {
        return "{\"id\":\"t" + named++ + "\",\"bore\":\"7/8 in\",\"at\":\"50 psi\"}";
    }

    private String supply(int levels) {
        String feeds = random.nextInt(3) == 0 ? feed(levels, true) + "," + feed(levels, true) : feed(levels, false);
        return "{\"keep\":\"20 psi\",\"feeds\":[" + feeds + "]}";
    }

    private String feed(int levels, boolean beside) {
        String hose =
                "\"hose\":[{\"id\":\"ldh\",\"diameter\":\"5 in\",\"section\":\"100 ft\",\"loss\":\"0.08 psi / 100 ft @ 100 gpm\",\"length\":\""
                        + number(100, 900) + " ft\",\"rise\":\"" + number(-10, 30) + " ft\"}]";
        return switch (random.nextInt(levels > 0 ? 4 : 3)) {
            case 0 -> "{\"tank\":{\"level\":\"750 gal\",\"loss\":\"10 psi @ 500 gpm\",\"most\":\"500 gpm\"}}";
            case 1 ->
                "{\"draft\":{\"lift\":\"" + number(3, 15) + " ft\",\"strainer\":\"1 psi @ 500 gpm\"},"
                        + hose.replaceAll("\"rise\":\"[^\"]*\"", "\"rise\":\"0 ft\"")
                        + "}";
            case 2 -> hydrant(hose);
            default ->
                "{\"pumper\":{\"id\":\"e" + named++
                        + "\",\"rated\":\"1500 gpm\",\"ceiling\":\"250 psi\",\"discharge\":{\"id\":\"ldh-1\",\"loss\":\"0.05 psi @ 100 gpm\"}"
                        + (beside || random.nextBoolean() ? ",\"pump\":\"" + number(60, 150) + " psi\"" : "")
                        + ",\"supply\":" + supply(levels - 1) + "}," + hose + "}";
        };
    }

    private String hydrant(String hose) {
        return "{\"hydrant\":{\"static\":\"" + number(40, 80) + " psi\",\"residual\":\"" + number(15, 35)
                + " psi\",\"at\":\"" + number(500, 1200) + " gpm\"}," + hose + "}";
    }

    private String number(double low, double high) {
        return String.valueOf(Math.round(100 * (low + (high - low) * random.nextDouble())) / 100.0);
    }
}
