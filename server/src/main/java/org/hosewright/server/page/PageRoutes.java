package org.hosewright.server.page;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import org.hosewright.server.guard.Refusal;
import org.hosewright.web.Page;
import org.hosewright.web.PageFile;
import org.hosewright.web.PageFiles;
import org.hosewright.web.Shell;

/** Sends the pages and the files they are made of. */
public final class PageRoutes {
    private static final String FOR_EVER = "public, max-age=31536000, immutable";

    private final PageFiles files;
    private final Shell shell;

    public PageRoutes(PageFiles files, Shell shell) {
        this.files = files;
        this.shell = shell;
    }

    public void addTo(JavalinConfig server) {
        server.router.mount(routes -> {
            for (Page page : Page.ALL) {
                byte[] html = shell.html(page).getBytes(StandardCharsets.UTF_8);
                routes.get(
                        page.path(),
                        answer -> answer.contentType("text/html; charset=utf-8").result(html));
            }
            routes.get("/files/{edition}/<path>", this::sendFile);
        });
    }

    private void sendFile(Context answer) {
        PageFile file = files.find(answer.pathParam("path")).orElseThrow(PageRoutes::unknown);
        if (!answer.pathParam("edition").equals(files.edition())) {
            throw unknown();
        }
        answer.header("Cache-Control", FOR_EVER)
                .header("Vary", "Accept-Encoding")
                .contentType(file.type());
        String accepted = answer.header("Accept-Encoding");
        if (accepted != null && accepted.contains("gzip")) {
            answer.header("Content-Encoding", "gzip").result(file.gzipped());
        } else {
            answer.result(file.plain());
        }
    }

    private static Refusal unknown() {
        return new Refusal(404, "No such file", "There is no such file; load the page again.");
    }
}
