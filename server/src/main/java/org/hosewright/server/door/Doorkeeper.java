package org.hosewright.server.door;

import com.github.benmanes.caffeine.cache.Ticker;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.hosewright.ledger.person.Known;
import org.hosewright.ledger.person.People;
import org.hosewright.ledger.person.Person;
import org.hosewright.ledger.person.Secret;
import org.hosewright.server.guard.Caller;
import org.hosewright.server.guard.Refusal;
import org.hosewright.server.password.Passwords;

/** Stands at every door of the API: lets in whom the door asks for, and signs people in and out. */
public final class Doorkeeper {
    private static final Duration QUARTER_HOUR = Duration.ofMinutes(15);
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final int MOST_WRONG = 5;
    private static final int MOST_WRONG_FROM_ADDRESS = 50;
    private static final int MOST_UNKNOWN_A_MINUTE = 300;
    private static final int MOST_KNOWN_A_MINUTE = 1_200;
    private static final int UNAUTHORIZED = 401;

    private final People people;
    private final Caller caller;
    private final Sessions sessions;
    private final Passwords passwords;
    private final Attempts wrong = new Attempts(MOST_WRONG, QUARTER_HOUR, Ticker.systemTicker());
    private final Attempts wrongFrom = new Attempts(MOST_WRONG_FROM_ADDRESS, QUARTER_HOUR, Ticker.systemTicker());
    private final Attempts unknown = new Attempts(MOST_UNKNOWN_A_MINUTE, MINUTE, Ticker.systemTicker());
    private final Attempts known = new Attempts(MOST_KNOWN_A_MINUTE, MINUTE, Ticker.systemTicker());
    private final AtomicBoolean anyone = new AtomicBoolean();

    public Doorkeeper(People people, Passwords passwords, Caller caller) {
        this.people = people;
        this.passwords = passwords;
        this.caller = caller;
        sessions = new Sessions(people, Ticker.systemTicker());
    }

    /** True once somebody has an account; nobody's account is ever taken away. */
    public boolean isAnyone() {
        if (!anyone.get() && people.isAnyone()) {
            anyone.set(true);
        }
        return anyone.get();
    }

    /** Lets a request through a door, or not.
     *
     * @throws Refusal the visitor is not whom the door asks for, or asks too often
     */
    public void admit(Context request, Admission admission) {
        if (!isAnyone()) {
            Visitor.atThisMachine().putTo(request);
            return;
        }
        Optional<Person> person = find(request);
        if (person.isEmpty()) {
            unknown.count(caller.address(request));
            requireOpen(admission);
            return;
        }
        known.count(person.get().id());
        require(person.get(), admission);
        Visitor.of(person.get()).putTo(request);
    }

    private static void requireOpen(Admission admission) {
        if (admission.kind() != Admission.Kind.ANYBODY) {
            throw new Refusal(UNAUTHORIZED, "Sign in first", "Sign in with your name and your password.");
        }
    }

    private static void require(Person person, Admission admission) {
        boolean arriving = admission.kind() == Admission.Kind.ANYBODY || admission.kind() == Admission.Kind.ARRIVING;
        if (person.given() && !arriving) {
            throw new Refusal(
                    403,
                    "Choose a password first",
                    "Your password was chosen by somebody else; choose one of your own first.");
        }
        if (admission.kind() == Admission.Kind.HAT && admission.hats().stream().noneMatch(person::mayWear)) {
            throw Visitor.missing(person, admission.words());
        }
    }

    /** The person signed in, where somebody is. */
    public Optional<Person> find(Context request) {
        return Optional.ofNullable(request.cookie(caller.cookie()))
                .flatMap(sessions::find)
                .map(Known::person);
    }

    /** Signs a person in.
     *
     * @throws Refusal the name or the password is wrong, or that was tried too often
     */
    public Person signIn(Context request, String name, String password) {
        String address = caller.address(request);
        String key = address + " " + name.strip().toLowerCase(Locale.ROOT);
        wrong.count(key);
        wrongFrom.count(address);
        Known found = recognise(name, password);
        wrong.forget(key);
        wrongFrom.takeBack(address);
        begin(request, found);
        return found.person();
    }

    private Known recognise(String name, String password) {
        Optional<Known> found =
                people.findKnown(name).filter(known -> known.person().active());
        if (found.isEmpty()) {
            passwords.pretend(password);
        }
        return found.filter(known -> passwords.isRight(password, known.secret()))
                .orElseThrow(() -> new Refusal(
                        UNAUTHORIZED, "Not signed in", "The name or the password is wrong; nobody was signed in."));
    }

    /** Makes sure that the one signed in knows the password.
     *
     * @throws Refusal it is wrong, or was tried too often
     */
    public void confirm(Person person, String password) {
        wrong.count(person.id());
        Secret secret = people.find(person.id()).orElseThrow().secret();
        if (!passwords.isRight(password, secret)) {
            throw new Refusal(403, "Wrong password", "The password is wrong; nothing was changed.");
        }
        wrong.forget(person.id());
    }

    /** Begins a session for a person whose secret was just made or confirmed; an earlier one of the browser ends. */
    public void begin(Context request, Known known) {
        forget(request);
        var cookie = new Cookie(caller.cookie(), sessions.begin(known));
        cookie.setHttpOnly(true);
        cookie.setSecure(caller.isSecure());
        cookie.setSameSite(SameSite.STRICT);
        cookie.setPath("/");
        cookie.setMaxAge((int) Sessions.LONGEST.toSeconds());
        request.cookie(cookie);
    }

    /** Ends the session of a browser. */
    public void end(Context request) {
        forget(request);
        request.removeCookie(caller.cookie());
    }

    private void forget(Context request) {
        Optional.ofNullable(request.cookie(caller.cookie())).ifPresent(sessions::end);
    }
}
