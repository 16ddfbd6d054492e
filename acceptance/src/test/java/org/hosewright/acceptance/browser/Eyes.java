package org.hosewright.acceptance.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One browser, and what it complained about: errors on its console, failures of scripts, breaches of the policy. */
final class Eyes implements AutoCloseable {
    /** How long a page may take to show what it should on a machine that is busy with other tests. */
    private static final int PATIENCE_ms = 30_000;

    private final Playwright playwright = Playwright.create();
    private final Browser browser = playwright
            .chromium()
            .launch(new BrowserType.LaunchOptions()
                    .setExecutablePath(
                            Path.of(System.getenv().getOrDefault("HOSEWRIGHT_CHROMIUM", "/usr/bin/chromium")))
                    .setArgs(List.of("--no-sandbox")));
    private final List<String> complaints = new ArrayList<>();

    /** A page on a screen of a size. */
    Page screen(int width_px, int height_px, ColorScheme scheme) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width_px, height_px)
                .setColorScheme(scheme)
                .setHasTouch(width_px < 500)
                .setAcceptDownloads(true));
        context.addInitScript("addEventListener('securitypolicyviolation', event =>"
                + " console.error('policy: ' + event.violatedDirective + ' ' + event.blockedURI))");
        return look(context);
    }

    /** A new page in the browser of one that was closed: what it kept is still there. */
    Page again(Page closed) {
        return look(closed.context());
    }

    private Page look(BrowserContext context) {
        Page page = context.newPage();
        page.setDefaultTimeout(PATIENCE_ms);
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_ms);
        page.onConsoleMessage(this::hear);
        page.onPageError(complaints::add);
        return page;
    }

    Page laptop() {
        return screen(1280, 800, ColorScheme.LIGHT);
    }

    private void hear(ConsoleMessage message) {
        if (message.type().equals("error") || message.type().equals("warning")) {
            complaints.add(message.text());
        }
    }

    /** What was complained about so far, other than a server that was stopped on purpose. */
    List<String> complaints() {
        return complaints.stream()
                .filter(text -> !text.contains("ERR_CONNECTION_REFUSED") && !text.contains("ERR_EMPTY_RESPONSE"))
                .toList();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
