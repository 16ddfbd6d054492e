package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** From nobody's account to a second person at another browser, who chooses a password and is told what takes a hat. */
final class SignInTest extends AtStation {
    private static final String OWNERS = "quiet lantern brindle ford";
    private static final String GIVEN = "seven copper kettles north";

    @Test
    void secondPersonComesInAndKeepsToTheHatHolds() {
        page.navigate(station.at("/people"));
        type(page.locator("hw-people form"), "A. Fenn", OWNERS, "Make the first account");
        assertThat(page.locator("#person")).containsText("A. Fenn");
        click(page, "Give somebody an account");
        type(page.locator("hw-people section form").first(), "B. Orr", GIVEN, "Make the account");
        assertThat(page.locator("[data-person='B. Orr']")).containsText("Has not chosen a password yet");

        try (BrowserContext phone = page.context().browser().newContext()) {
            Page other = phone.newPage();
            other.navigate(station.at("/orders"));
            Locator dialog = other.locator("dialog");
            dialog.locator("[name=name]").fill("b. orr");
            dialog.locator("[name=password]").fill("not the one at all");
            click(other, "Sign in");
            assertThat(dialog).containsText("The name or the password is wrong");
            dialog.locator("[name=password]").fill(GIVEN);
            click(other, "Sign in");
            dialog.locator("[name=wanted]").fill("green ladder under snow");
            dialog.locator("[name=password]").fill(GIVEN);
            click(other, "Take this password");
            assertThat(dialog).hasCount(0);
            assertThat(other.locator("#person")).containsText("B. Orr");
            click(other, "Propose");
            assertThat(other.locator(".note"))
                    .containsText(Pattern.compile("takes the hat of analyst.*B\\. Orr was not given"));
        }
    }

    private static void type(Locator form, String name, String password, String button) {
        form.locator("[name=name]").fill(name);
        form.locator("[name=password]").fill(password);
        form.locator("[name=again]").fill(password);
        form.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(button))
                .click();
    }

    private static void click(Page where, String button) {
        where.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }
}
