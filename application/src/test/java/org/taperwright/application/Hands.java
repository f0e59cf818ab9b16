package org.taperwright.application;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.AbstractButton;

/**
 * A person at the running workbench: finds things by name or words, points, clicks, drags and types, and waits until
 * something is so. Nothing waits for a fixed time.
 */
final class Hands {
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Duration BETWEEN_CLICKS = Duration.ofSeconds(2);
    private static final int SMALL_MOVES = 10;

    private final Robot robot;

    Hands() {
        try {
            robot = new Robot();
        } catch (AWTException refused) {
            throw new IllegalStateException("the pointer and keys cannot be driven here", refused);
        }
        robot.setAutoDelay(15);
        robot.setAutoWaitForIdle(true);
    }

    /** Waits until something is so, asking on the event thread; keeps a picture and fails when it does not come. */
    void await(String what, BooleanSupplier condition) {
        await(what, PATIENCE, condition);
    }

    /** The same for work that may take longer. */
    void await(String what, Duration patience, BooleanSupplier condition) {
        long end = System.nanoTime() + patience.toNanos();
        while (!onEventThread(condition::getAsBoolean)) {
            if (System.nanoTime() > end) {
                Screen.keep("waited-in-vain");
                throw new AssertionError("waited in vain for " + what);
            }
            robot.delay(40);
        }
    }

    /** Waits for a showing component of that name. */
    <C extends Component> C find(String name, Class<C> type) {
        return find("a component named " + name, type, component -> name.equals(component.getName()));
    }

    /** Waits for a showing component of that type that fits. */
    <C extends Component> C find(String what, Class<C> type, Predicate<C> fits) {
        AtomicReference<C> found = new AtomicReference<>();
        await(what, () -> {
            showing(type, fits).ifPresent(found::set);
            return found.get() != null;
        });
        return found.get();
    }

    /** Whether such a component shows now. */
    boolean shows(String name) {
        return onEventThread(() -> showing(Component.class, component -> name.equals(component.getName()))
                .isPresent());
    }

    /** Whether a component of that type that fits shows now. */
    <C extends Component> boolean showsAny(Class<C> type, Predicate<C> fits) {
        return onEventThread(() -> showing(type, fits).isPresent());
    }

    /** Reads something on the event thread. */
    <V> V onEventThread(Supplier<V> reading) {
        if (EventQueue.isDispatchThread()) {
            return reading.get();
        }
        AtomicReference<V> value = new AtomicReference<>();
        try {
            EventQueue.invokeAndWait(() -> value.set(reading.get()));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while waiting", stopped);
        } catch (InvocationTargetException failed) {
            throw new IllegalStateException("reading on the event thread failed", failed.getCause());
        }
        return value.get();
    }

    /** Clicks the middle of a component. */
    void click(Component component) {
        click(middle(component));
    }

    /**
     * Clicks a component again and again until something is so: without a window manager a click on a window that has just
     * come up, or still moves, may be lost. A button that has the keyboard is pressed by it every other time: the pointer's
     * events may go to the window below for long.
     */
    void clickUntil(Component component, String what, BooleanSupplier condition) {
        int lost = 0;
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!onEventThread(condition::getAsBoolean)) {
            if (System.nanoTime() > end) {
                Screen.keep("waited-in-vain");
                throw new AssertionError("clicked in vain for " + what);
            }
            if (lost % 2 == 1 && onEventThread(() -> component instanceof AbstractButton && component.isFocusOwner())) {
                press(KeyEvent.VK_SPACE);
            } else if (onEventThread(component::isShowing)) {
                click(component);
            }
            lost++;
            long again = System.nanoTime() + BETWEEN_CLICKS.toNanos();
            while (System.nanoTime() < again && !onEventThread(condition::getAsBoolean)) {
                robot.delay(40);
            }
        }
    }

    /** Clicks a point of the screen. */
    void click(Point at) {
        robot.mouseMove(at.x, at.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    /** Double-clicks a point of the screen. */
    void doubleClick(Point at) {
        click(at);
        click(at);
    }

    /**
     * Drags from one point of the screen to another: ten small moves near the start first, since a fast first movement
     * is taken for extending the selection.
     */
    void drag(Point from, Point to) {
        robot.mouseMove(from.x, from.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        for (int move = 1; move <= SMALL_MOVES; move++) {
            robot.mouseMove(from.x + move, from.y + move / 4);
        }
        for (int move = 1; move <= SMALL_MOVES; move++) {
            robot.mouseMove(
                    from.x + (to.x - from.x) * move / SMALL_MOVES, from.y + (to.y - from.y) * move / SMALL_MOVES);
        }
        robot.mouseMove(to.x + 1, to.y);
        robot.mouseMove(to.x, to.y);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    /**
     * Presses keys together, such as Ctrl and Z, and lets them go in reverse. Waits for the program only afterwards: a key
     * held down while it is busy would repeat.
     */
    void press(int... keyCodes) {
        robot.setAutoWaitForIdle(false);
        for (int code : keyCodes) {
            robot.keyPress(code);
        }
        for (int i = keyCodes.length - 1; i >= 0; i--) {
            robot.keyRelease(keyCodes[i]);
        }
        robot.setAutoWaitForIdle(true);
        robot.waitForIdle();
    }

    /** Types letters, digits, points, commas, hyphens, slashes and spaces. */
    void type(String text) {
        for (char letter : text.toCharArray()) {
            int code = KeyEvent.getExtendedKeyCodeForChar(letter);
            if (Character.isUpperCase(letter)) {
                press(KeyEvent.VK_SHIFT, code);
            } else {
                press(code);
            }
        }
    }

    /** Clicks into a field, replaces what it holds and presses Enter. */
    void enter(Component field, String text) {
        click(field);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        type(text);
        press(KeyEvent.VK_ENTER);
    }

    /** Opens a menu and clicks the item whose words begin so. */
    void choose(String menu, String item) {
        click(button(menu));
        click(button(item));
    }

    /** Waits for a showing button, menu or menu item whose words begin so. */
    AbstractButton button(String words) {
        return find(
                "a button or menu item \"" + words + "\"",
                AbstractButton.class,
                button -> button.getText() != null && button.getText().startsWith(words));
    }

    /** The middle of a component on the screen. */
    Point middle(Component component) {
        Rectangle bounds = onEventThread(() -> new Rectangle(component.getLocationOnScreen(), component.getSize()));
        return new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
    }

    private static <C extends Component> Optional<C> showing(Class<C> type, Predicate<C> fits) {
        return Stream.of(Window.getWindows())
                .filter(Component::isShowing)
                .flatMap(Hands::withParts)
                .filter(Component::isShowing)
                .filter(type::isInstance)
                .map(type::cast)
                .filter(fits)
                .findFirst();
    }

    private static Stream<Component> withParts(Component component) {
        Stream<Component> parts = component instanceof Container container
                ? Stream.of(container.getComponents()).flatMap(Hands::withParts)
                : Stream.empty();
        return Stream.concat(Stream.of(component), parts);
    }
}
