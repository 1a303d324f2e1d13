// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import java.time.Duration;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A finger and a keyboard, on pages whose parts are renewed while they are used. */
final class Hands {
    private static final PointerInput FINGER = new PointerInput(PointerInput.Kind.TOUCH, "finger");
    private static final int LEFT = PointerInput.MouseButton.LEFT.asArg();

    private final ChromeDriver browser;
    private final Duration patience;

    Hands(ChromeDriver browser, Duration patience) {
        this.browser = browser;
        this.patience = patience;
    }

    void tap(String what) {
        until(
                () -> {
                    WebElement there = browser.findElement(By.cssSelector(what));
                    browser.perform(List.of(finger(there).addAction(FINGER.createPointerUp(LEFT))));
                    return true;
                },
                what);
    }

    void drag(WebElement what, int down) {
        var along = FINGER.createPointerMove(Duration.ofMillis(300), PointerInput.Origin.pointer(), 0, down);
        browser.perform(List.of(finger(what).addAction(along).addAction(FINGER.createPointerUp(LEFT))));
    }

    private Sequence finger(WebElement on) {
        browser.executeScript("arguments[0].scrollIntoView({block: 'center'})", on);
        return new Sequence(FINGER, 0)
                .addAction(FINGER.createPointerMove(Duration.ZERO, PointerInput.Origin.fromElement(on), 0, 0))
                .addAction(FINGER.createPointerDown(LEFT));
    }

    /** Goes there with the tabulator alone. */
    void focus(String what) {
        for (int i = 0; i < 40; i++) {
            if (Boolean.TRUE.equals(
                    browser.executeScript("return document.activeElement.matches(arguments[0])", what))) {
                return;
            }
            new Actions(browser).sendKeys(Keys.TAB).perform();
        }
        throw new AssertionError("the tabulator does not come to " + what);
    }

    /** Types in place of what is there; again if the form comes back meanwhile. */
    void type(String id, String text) {
        until(
                () -> {
                    WebElement field = browser.findElement(By.id(id));
                    field.sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
                    return text.equals(field.getDomProperty("value"));
                },
                id);
    }

    void click(String what) {
        until(
                () -> {
                    browser.findElement(By.cssSelector(what)).click();
                    return true;
                },
                what);
    }

    /** Does something to the editor of plans and waits until the form has come back from the program. */
    void renewed(Runnable act) {
        WebElement form = browser.findElement(By.id("editor"));
        act.run();
        new WebDriverWait(browser, patience).until(ExpectedConditions.stalenessOf(form));
    }

    private void until(BooleanSupplier done, String what) {
        new WebDriverWait(browser, patience, Duration.ofMillis(100))
                .withMessage(what + " could not be used")
                .ignoring(StaleElementReferenceException.class)
                .until(b -> done.getAsBoolean());
    }
}
