// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A person at the keypad of an open browser. */
final class Keypad {
    private static final int FINGER = 60; // px, the smallest key
    private static final Pattern DISPLAY = Pattern.compile("shows (\\S+) % RH\\..* shows (\\S+) °C");

    private final ChromeDriver browser;
    private final Path pictures;

    Keypad(ChromeDriver browser, Path pictures) {
        this.browser = browser;
        this.pictures = pictures;
    }

    /** Types all that is wanted at a point, with every kind of trouble on the way. */
    void readOnePoint(RunningProgram program) throws IOException {
        new Hands(browser, Duration.ofMinutes(1)).click("a[href='/bench/entries']");
        fits(1280, 800);
        fits(1024, 600);
        keep("keypad");
        press(display(1));
        browser.findElement(By.cssSelector(".keypad .enter")).click();
        until(() -> text(".turn b").equals("Entry 1 of 5") && chosen().contains("temperature"), "the other quantity");
        browser.switchTo().activeElement().sendKeys(display(2), Keys.ENTER);
        until(() -> text(".turn b").equals("Entry 2 of 5"), "the second entry");

        String swapped = swapped(display(1));
        browser.switchTo().activeElement().sendKeys(swapped, Keys.ENTER);
        until(() -> !browser.findElements(By.cssSelector(".question")).isEmpty(), "the question");
        keep("keypad-question");
        browser.findElement(By.cssSelector(".question button[name=instead]")).click();
        until(() -> chosen().contains("temperature"), "the answer to be taken");

        photograph(display(2));
        browser.findElement(By.partialLinkText("temperature")).click();
        until(
                () -> !browser.findElements(By.cssSelector(".sofar a[href*='/photos/']"))
                        .isEmpty(),
                "the photo");
        browser.findElement(By.cssSelector(".sofar form button")).click();
        browser.findElement(By.partialLinkText("temperature")).click();
        until(
                () -> !browser.findElements(By.cssSelector(".sofar .withdrawn")).isEmpty(),
                "the mark of what was taken back");
        keep("keypad-taken-back");
        readTheRest();
        browser.get(browser.getCurrentUrl().replaceAll("/bench.*", "/bench"));
        until(() -> !browser.findElements(By.cssSelector(".step.is-RECORDED")).isEmpty(), "a whole point");
        browser.manage().window().setSize(new Dimension(1280, 800));
    }

    private void readTheRest() {
        browser.get(browser.getCurrentUrl().replaceAll("[?].*", ""));
        while (!browser.findElements(By.id("shown")).isEmpty()) {
            String before = text(".displays");
            browser.findElement(By.id("shown")).sendKeys(display(chosen().contains("humidity") ? 1 : 2), Keys.ENTER);
            until(() -> !text(".displays").equals(before), "the next entry");
        }
    }

    private void photograph(String shown) {
        browser.findElement(By.cssSelector(".keypad summary")).click();
        browser.findElement(By.name("photo"))
                .sendKeys(pictures.resolve("keypad.png").toAbsolutePath().toString());
        press(shown);
        browser.findElement(By.cssSelector(".keypad .enter")).click();
        until(() -> chosen().contains("humidity"), "the entry with its photo");
    }

    /** The whole keypad is there without scrolling, with keys for fingers. */
    private void fits(int width, int height) {
        browser.manage().window().setSize(new Dimension(width, height));
        List<WebElement> keys =
                browser.findElements(By.cssSelector(".keypad .keys button, .keypad .sign, .keypad .enter"));
        assertEquals(14, keys.size());
        long inside = Long.parseLong(String.valueOf(browser.executeScript("return window.innerHeight")));
        for (WebElement key : keys) {
            assertTrue(key.getSize().getHeight() >= FINGER && key.getSize().getWidth() >= FINGER, key.getText());
            assertTrue(key.getLocation().getY() + key.getSize().getHeight() <= inside, key.getText() + " is in sight");
        }
    }

    private void press(String figure) {
        for (String key : figure.split("")) {
            browser.findElement(By.cssSelector(".keys button[value='" + key + "']"))
                    .click();
        }
        assertEquals(figure, browser.findElement(By.id("shown")).getDomProperty("value"));
    }

    /** What the simulated display shows: 1 for the humidity, 2 for the temperature. */
    private String display(int group) {
        Matcher found = DISPLAY.matcher(text(".remark"));
        assertTrue(found.find(), "the remark says what the simulated display shows");
        return found.group(group);
    }

    /** The first two digits the other way round. */
    private static String swapped(String figure) {
        return "" + figure.charAt(1) + figure.charAt(0) + figure.substring(2);
    }

    private String chosen() {
        return text(".displays a[aria-current]");
    }

    private String text(String selector) {
        List<WebElement> found = browser.findElements(By.cssSelector(selector));
        return found.isEmpty() ? "" : found.getFirst().getText();
    }

    private void until(java.util.function.BooleanSupplier there, String what) {
        new WebDriverWait(browser, Duration.ofMinutes(1), Duration.ofMillis(100))
                .withMessage(() -> what + " did not come; the page says: " + text("main"))
                .ignoring(StaleElementReferenceException.class)
                .until(b -> there.getAsBoolean());
    }

    private void keep(String name) throws IOException {
        Files.write(pictures.resolve(name + ".png"), browser.getScreenshotAs(OutputType.BYTES));
        assertEquals(List.of(), Accessibility.objections(browser), "on the page " + name);
    }
}
