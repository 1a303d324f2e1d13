// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A technician looks on while a point is calibrated, and takes the certificate. In a real Chromium. */
class BrowserIT {
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private static RunningProgram program;
    private static ChromeDriver browser;
    private static Path pictures;
    private static Path downloads;
    private static Hands hands;

    @BeforeAll
    static void open() throws Exception {
        pictures = RunningProgram.output("pictures");
        downloads = Files.createTempDirectory("downloads");
        browser = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(
                                new java.io.File(from("ISOHUME_BROWSER_DRIVER", "/usr/bin/chromedriver")))
                        .build(),
                options());
        hands = new Hands(browser, PATIENCE);
        browser.manage().window().setSize(new Dimension(1280, 800));
        Path data = Files.createTempDirectory("demo");
        program = RunningProgram.with("demo", "--port", "0", "--speed", "150", "--data", data.toString());
        browser.get(program.address());
    }

    private static String from(String variable, String usual) {
        return System.getenv().getOrDefault(variable, usual);
    }

    private static ChromeOptions options() {
        return new ChromeOptions()
                .setBinary(from("ISOHUME_BROWSER", "/usr/bin/chromium"))
                .setExperimentalOption("prefs", Map.of("download.default_directory", downloads.toString()))
                .addArguments(
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                        "--hide-scrollbars");
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
        if (program != null) {
            program.close();
        }
    }

    @Test
    void a_point_goes_from_approach_over_soak_to_record_and_its_certificate_can_be_taken() throws Exception {
        List<String> seen = new ArrayList<>();
        for (String phase : List.of("approach", "soak", "record")) {
            until(() -> phase().equals(phase), "the phase " + phase);
            seen.add(phase());
            if (phase.equals("soak")) {
                until(() -> present(".wedge svg .limit") && present(".wedge svg .name"), "the closing wedge");
            }
            keep("bench-" + phase);
        }
        assertEquals(List.of("approach", "soak", "record"), seen);

        until(() -> !browser.findElements(By.cssSelector(".step.is-RECORDED")).isEmpty(), "a whole point");
        keep("bench");
        browser.manage().window().setSize(new Dimension(1024, 600));
        keep("bench-small");
        browser.manage().window().setSize(new Dimension(1280, 800));

        browser.findElement(By.cssSelector("header a[href^='/runs/']")).click();
        WebElement budget = browser.findElement(By.cssSelector("section.result a.open"));
        keep("run");
        budget.click();
        until(() -> browser.findElement(By.cssSelector(".opened")).getText().contains("calibration"), "the budget");
        keep("budget");

        WebElement certificate = browser.findElement(By.partialLinkText("Certificate of A-1042"));
        String address = String.valueOf(certificate.getDomAttribute("href"));
        certificate.click();
        Path file = downloads.resolve("certificate-A-1042.pdf");
        until(() -> Files.exists(file), "the certificate");
        byte[] bytes = program.get(address);
        assertEquals("%PDF", new String(bytes, 0, 4, StandardCharsets.US_ASCII));
        assertTrue(bytes.length > 20_000, "a certificate has some weight, had " + bytes.length + " bytes");
    }

    @Test
    void a_run_is_held_by_a_finger_and_goes_on_by_the_keyboard() throws Exception {
        browser.get(program.address());
        until(() -> present("button[value=hold]"), "the button that holds");
        hands.tap("button[value=hold]");
        until(() -> phase().equals("held"), "the hold");
        until(() -> present("button[value=resume]"), "the button that goes on");
        hands.focus("button[value=resume]");
        browser.switchTo().activeElement().sendKeys(Keys.ENTER);
        until(() -> !phase().isEmpty() && !phase().equals("held"), "the run that goes on");
    }

    @Test
    void pages_for_converting_for_safety_and_for_the_wall_open() throws Exception {
        String home = program.address();
        for (String page :
                List.of("convert?temperature=23&known=dew_point&value=12.03", "safety", "bench/wall", "runs")) {
            browser.get(home + page);
            keep(page.replaceAll(".*/", "").replaceAll("\\W.*", ""));
            assertTrue(browser.findElements(By.tagName("h1")).size() <= 1, page + " has one heading");
            assertEquals(0, browser.findElements(By.cssSelector(".error")).size(), page + " is no error page");
        }
        browser.get(home);
    }

    @Test
    void an_exported_file_is_asked_about_understood_kept_and_laid_over_the_reference() throws Exception {
        browser.manage().window().setSize(new Dimension(1024, 600));
        ExportedFiles files = new ExportedFiles(Files.createTempDirectory("exports"));
        take(files.utf16Reference());
        assertEquals("Understood", outcome());
        keep("import-utf-16");
        keepFile();
        take(files.german());
        assertEquals("In doubt", outcome());
        keep("import-german-questions");
        answer("zone", "+01:00");
        assertEquals("Understood", outcome());
        keep("import-german");
        keepFile();
        browser.findElement(By.cssSelector("form[method=get] button")).click();
        until(() -> !browser.findElements(By.cssSelector("svg.overlay")).isEmpty(), "the overlay");
        keep("import-overlay");
        assertTrue(browser.findElement(By.className("offset")).getText().contains("ahead by 7"), "754 s");
        assertTrue(browser.findElements(By.cssSelector(".overlay .day")).size() > 0, "a date on the axis");
        browser.findElement(By.cssSelector("#plan ~ button")).sendKeys(Keys.ENTER);
        until(() -> browser.getCurrentUrl().contains("plan="), "what would be used");
        keep("import-used");
        browser.findElement(By.id("operator")).sendKeys("M. Example");
        browser.findElement(By.cssSelector("form[method=post] button")).click();
        until(() -> browser.getCurrentUrl().endsWith("/import"), "the list of imported files");
        keep("import");
        browser.manage().window().setSize(new Dimension(1280, 800));
        browser.get(program.address());
    }

    @Test
    void a_plan_is_edited_on_its_map_with_fingers_and_keys_and_kept_as_a_new_file() throws Exception {
        browser.get(program.address() + "plans");
        keep("plans");
        browser.findElement(By.linkText("Three temperatures, humidity up and down"))
                .click();
        until(() -> !browser.findElements(By.cssSelector("#h-8[tabindex]")).isEmpty(), "handles");
        assertEquals(15, browser.findElements(By.cssSelector(".handle")).size());

        WebElement point = browser.findElement(By.id("h-8"));
        hands.renewed(() -> hands.drag(point, 60));
        until(() -> !field("h-8-rh").equals("85"), "the point that was dragged");
        double dragged = Double.parseDouble(field("h-8-rh"));
        assertTrue(dragged > 55 && dragged < 84, "dragged to " + dragged + " % RH");
        assertEquals("23", field("t-8"));

        until(() -> "h-8".equals(browser.switchTo().activeElement().getDomAttribute("id")), "the focus to stay");
        browser.switchTo().activeElement().sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        until(() -> field("t-8").equals("25"), "the point that was moved by keys");
        keep("plan");

        hands.click("button[value=undo]");
        until(() -> field("t-8").equals("23"), "the undone move");
        WebElement paper = browser.findElement(By.cssSelector(".paper"));
        hands.renewed(
                () -> new Actions(browser).moveToElement(paper, 40, 60).click().perform());
        until(() -> browser.findElements(By.cssSelector(".handle")).size() == 16, "the point that was tapped in");
        hands.type("h-16-rh", "99.5");
        new Actions(browser).sendKeys(Keys.TAB).perform();
        until(() -> !browser.findElements(By.cssSelector(".row.is-beyond")).isEmpty(), "the reason why not");
        hands.click("button[value='axis-dew']");
        until(() -> browser.findElements(By.cssSelector("svg .q-dew_point")).size() == 1, "the dew-point axis");
        keep("plan-dew-point");

        hands.type("title", "Another plan");
        hands.click("button[value=keep]");
        until(() -> browser.getCurrentUrl().contains("kept=0001-another-plan.yaml"), "the new plan's page");
        assertEquals("Another plan", browser.findElement(By.tagName("h1")).getText());
        browser.manage().window().setSize(new Dimension(1024, 600));
        keep("plan-small");
        browser.manage().window().setSize(new Dimension(1280, 800));
        browser.get(program.address());
    }

    @Test
    void a_device_is_tried_and_what_is_wrong_is_told_in_plain_words() throws Exception {
        browser.get(program.address() + "bench");
        browser.findElement(By.linkText("Devices")).click();
        keep("devices");
        browser.findElement(By.cssSelector("form:has(input[value=mirror]) button"))
                .click();
        until(() -> browser.findElement(By.cssSelector("table")).getText().contains("dew_point"), "a trial");
        until(() -> browser.findElement(By.cssSelector(".transcript")).getText().contains("> "), "bytes");
        keep("device-trial");
        browser.findElement(By.cssSelector(".trial-state button")).click();
        until(() -> browser.findElement(By.className("trial-state")).getText().startsWith("Stopped."), "the stop");

        browser.manage().window().setSize(new Dimension(1024, 600));
        browser.get(program.address() + "devices?example=text");
        keep("devices-example");
        WebElement description = browser.findElement(By.id("description"));
        String example = String.valueOf(description.getDomProperty("value"));
        description.clear();
        description.sendKeys("device: p");
        browser.findElement(By.cssSelector("form.fields button")).click();
        assertTrue(browser.findElement(By.className("caution")).getText().contains("line is missing"), "what is wrong");
        keep("devices-refused");

        description = browser.findElement(By.id("description"));
        description.clear();
        description.sendKeys(example.replaceAll("/dev/tty\\w+", "/dev/nobody"));
        browser.findElement(By.cssSelector("form.fields button")).click();
        until(() -> !browser.findElements(By.cssSelector(".findings li")).isEmpty(), "what was found");
        assertTrue(browser.findElement(By.className("findings")).getText().contains("look at the cable"), "advice");
        keep("device-trial-wrong");
        browser.findElement(By.cssSelector(".trial-state button")).click();
        browser.manage().window().setSize(new Dimension(1280, 800));
        browser.get(program.address());
    }

    @Test
    void a_display_is_read_on_a_keypad_with_fingers_and_keys_questioned_photographed_and_taken_back() throws Exception {
        Path data = Files.createTempDirectory("keypad");
        try (RunningProgram handheld = RunningProgram.with(
                "demo",
                "--plan",
                "../examples/handheld/plan.yaml",
                "--port",
                "0",
                "--speed",
                "150",
                "--data",
                data.toString())) {
            browser.get(handheld.address());
            until(() -> !browser.findElements(By.linkText("Type the readings")).isEmpty(), "the wish for a reading");
            keep("bench-wanted");
            new Keypad(browser, pictures).readOnePoint(handheld);
        }
        browser.get(program.address());
    }

    @Test
    void an_american_file_and_a_broken_one_are_told_apart() throws Exception {
        ExportedFiles files = new ExportedFiles(Files.createTempDirectory("exports"));
        take(files.american());
        assertEquals("In doubt", outcome());
        answer("zone", "America/Chicago");
        assertEquals("Understood", outcome());
        keep("import-american");
        take(files.brokenInThreePlaces());
        answer("zone", "+01:00");
        assertEquals("Cannot be read as it is", outcome());
        assertEquals(
                3, browser.findElements(By.cssSelector("table.broken tbody tr")).size());
        keep("import-broken");
        browser.get(program.address());
    }

    private static void take(Path file) throws Exception {
        browser.get(program.address() + "import");
        browser.findElement(By.id("file")).sendKeys(file.toAbsolutePath().toString());
        browser.findElement(By.cssSelector("form[enctype] button")).click();
        until(() -> browser.getCurrentUrl().contains("/import/"), "what is in the file");
    }

    private static String outcome() throws Exception {
        return browser.findElement(By.className("outcome")).getText();
    }

    private static void answer(String key, String value) throws Exception {
        browser.findElement(By.name("b." + key)).sendKeys(value);
        browser.findElement(By.cssSelector("form.questions button")).click();
        until(() -> browser.findElements(By.name("b." + key)).isEmpty(), "the answer");
    }

    private static void keepFile() throws Exception {
        browser.findElement(By.id("operator")).sendKeys("M. Example");
        browser.findElement(By.cssSelector("form[method=post] button")).click();
        until(() -> browser.getCurrentUrl().endsWith("/clock"), "the kept file");
    }

    private static String field(String id) {
        try {
            return String.valueOf(browser.findElement(By.id(id)).getDomProperty("value"));
        } catch (StaleElementReferenceException | NoSuchElementException replaced) {
            return "";
        }
    }

    @Test
    void a_picture_that_says_nothing_to_the_blind_is_objected_to() throws Exception {
        browser.get("data:text/html,<html lang=en><title>A picture</title><main><img src=nothing.png></main>");
        assertTrue(Accessibility.objections(browser).toString().contains("image-alt"), "the rules are at work");
        browser.get(program.address());
    }

    private static boolean present(String what) {
        return !browser.findElements(By.cssSelector(what)).isEmpty();
    }

    private static String phase() {
        try {
            return browser.findElement(By.cssSelector(".phase .word span")).getText();
        } catch (StaleElementReferenceException replaced) {
            return ""; // the live part was renewed just now
        }
    }

    private static void until(java.util.function.BooleanSupplier there, String what) {
        new WebDriverWait(browser, PATIENCE, Duration.ofMillis(100))
                .withMessage(() -> what + " did not come; the program said: " + program.said())
                .ignoring(StaleElementReferenceException.class)
                .until(b -> there.getAsBoolean());
    }

    /** Keeps a picture, and lets nobody be shut out. */
    private static void keep(String name) throws IOException {
        Files.write(pictures.resolve(name + ".png"), browser.getScreenshotAs(OutputType.BYTES));
        assertEquals(List.of(), Accessibility.objections(browser), "on the page " + name);
    }
}
