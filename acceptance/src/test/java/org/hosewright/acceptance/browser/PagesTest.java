package org.hosewright.acceptance.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds on every page: readable by everyone, on a phone and on an old laptop, within the policy, light enough. */
final class PagesTest {
    private static final List<String> PAGES = List.of(
            "/",
            "/bed",
            "/plan",
            "/drill",
            "/trial",
            "/reach",
            "/ground",
            "/lay",
            "/papers",
            "/orders",
            "/neighbours",
            "/kit",
            "/people",
            "/history");

    /** WCAG 2.0 to 2.2, levels A and AA, as axe names them. */
    private static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    /** The first view without the fonts, compressed [bytes]. */
    private static final long FIRST_VIEW_bytes = 150_000;

    /** A laptop's page at 200 % zoom has half its width; only that it fits is looked at, the rest is the same page's. */
    private static final int ZOOMED_px = 640;

    @TempDir
    private static Path folder;

    private static Station station;
    private static Eyes eyes;

    @BeforeAll
    static void open() {
        station = Station.demo(folder);
        eyes = new Eyes();
    }

    @AfterAll
    static void close() {
        eyes.close();
        station.close();
    }

    static Stream<Arguments> screens() {
        return PAGES.stream()
                .flatMap(page -> Stream.of(
                        Arguments.of(page, 360, 740, ColorScheme.DARK),
                        Arguments.of(page, 1024, 768, ColorScheme.LIGHT),
                        Arguments.of(page, ZOOMED_px, 400, ColorScheme.LIGHT)));
    }

    /** One visit a screen, with nothing kept from another, so that the first view is counted whole. */
    @ParameterizedTest
    @MethodSource("screens")
    void everyPageHolds(String path, int width_px, int height_px, ColorScheme scheme) {
        Page page = eyes.screen(width_px, height_px, scheme);
        List<String> asked = new ArrayList<>();
        page.onRequest(request -> asked.add(request.url()));
        visit(page, path);
        assertThat(asked).isNotEmpty().allMatch(url -> url.startsWith(station.at("/")));
        assertThat(page.locator("h1").count()).isEqualTo(1);
        assertThat(page.locator("h1").textContent()).endsWith("?");
        assertThat(firstView_bytes(page)).isPositive().isLessThanOrEqualTo(FIRST_VIEW_bytes);
        if (width_px != ZOOMED_px) {
            readableByEveryone(page);
        }
        assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
                .as("width of what would have to be scrolled sideways")
                .isLessThanOrEqualTo(width_px);
        assertThat(eyes.complaints()).isEmpty();
        page.context().close();
    }

    private static void readableByEveryone(Page page) {
        List<String> violations = new AxeBuilder(page)
                .withTags(WCAG).analyze().getViolations().stream()
                        .map(PagesTest::told)
                        .toList();
        assertThat(violations).isEmpty();
    }

    private static long firstView_bytes(Page page) {
        String sum = "performance.getEntries().filter(entry => 'encodedBodySize' in entry"
                + " && !entry.name.includes('/font/')).reduce((sum, entry) => sum + entry.encodedBodySize, 0)";
        return ((Number) page.evaluate(sum)).longValue();
    }

    private static void visit(Page page, String path) {
        page.navigate(station.at(path));
        page.waitForLoadState(LoadState.NETWORKIDLE);
    }

    private static String told(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " at "
                + rule.getNodes().stream()
                        .map(node -> String.valueOf(node.getHtml()))
                        .limit(3)
                        .toList();
    }
}
