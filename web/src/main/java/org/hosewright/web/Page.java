package org.hosewright.web;

import java.util.List;

/** A page: one question.
 *
 * @param path where a browser finds it: "/drill"
 * @param name its one word in the navigation
 * @param question its heading
 * @param module the script that fills it, below the pages' folder
 */
public record Page(String path, String name, String question, String module) {

    /** The pages there are, in the order of the navigation. */
    public static final List<Page> ALL = List.of(
            new Page("/", "station", "Is every line ready?", "station/station.js"),
            new Page("/bed", "bed", "What lies on the rig?", "bed/bed.js"),
            new Page("/plan", "plan", "What should we flow next?", "plan/plan.js"),
            new Page("/drill", "drill", "What did the night show?", "drill/drill.js"),
            new Page("/trial", "trial", "Do they really differ?", "trial/trial.js"),
            new Page("/reach", "reach", "How far can it go, and what stops it?", "reach/reach.js"),
            new Page("/ground", "ground", "What lies under the hose?", "ground/ground.js"),
            new Page("/lay", "lay", "What do we pump for this?", "lay/lay.js"),
            new Page("/papers", "papers", "What goes on the rig?", "papers/papers.js"),
            new Page("/orders", "orders", "What is ordered?", "orders/orders.js"),
            new Page("/neighbours", "neighbours", "What do the neighbours pump?", "neighbours/neighbours.js"),
            new Page("/kit", "kit", "What do we have?", "kit/kit.js"),
            new Page("/people", "people", "Who may do what?", "people/people.js"),
            new Page("/history", "history", "Who changed what, when, why?", "history/history.js"));
}
