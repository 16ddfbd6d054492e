package org.hosewright.acceptance.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
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
                        // A laptop's page at 200 % zoom has half its width in CSS pixels.
                        Arguments.of(page, 640, 400, ColorScheme.LIGHT)));
    }

    @ParameterizedTest
    @MethodSource("screens")
    void readableByEveryoneHolds(String path, int width_px, int height_px, ColorScheme scheme) {
        Page page = eyes.screen(width_px, height_px, scheme);
        visit(page, path);
        List<String> violations = new AxeBuilder(page)
                .withTags(WCAG).analyze().getViolations().stream()
                        .map(PagesTest::told)
                        .toList();
        assertThat(violations).isEmpty();
        assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
                .as("width of what would have to be scrolled sideways")
                .isLessThanOrEqualTo(width_px);
        assertThat(eyes.complaints()).isEmpty();
        page.context().close();
    }

    @Test
    void oneQuestionAPageHolds() {
        Page page = eyes.laptop();
        for (String path : PAGES) {
            visit(page, path);
            assertThat(page.locator("h1").count()).as(path).isEqualTo(1);
            assertThat(page.locator("h1").textContent()).endsWith("?");
        }
        page.context().close();
    }

    @Test
    void firstViewWithinItsSizeHolds() {
        for (String path : PAGES) {
            Page page = eyes.laptop();
            visit(page, path);
            long size = ((Number)
                            page.evaluate(
                                    "performance.getEntries().filter(entry => 'encodedBodySize' in entry"
                                            + " && !entry.name.includes('/font/')).reduce((sum, entry) => sum + entry.encodedBodySize, 0)"))
                    .longValue();
            System.out.println("First view of " + path + ": " + size + " bytes without the fonts");
            assertThat(size).as(path).isPositive().isLessThanOrEqualTo(FIRST_VIEW_bytes);
            page.context().close();
        }
    }

    @Test
    void nothingFromElsewhereHolds() {
        Page page = eyes.laptop();
        page.onRequest(request -> assertThat(request.url()).startsWith(station.at("/")));
        PAGES.forEach(path -> visit(page, path));
        page.context().close();
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
