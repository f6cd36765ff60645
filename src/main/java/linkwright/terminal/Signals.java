package linkwright.terminal;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;

/**
 * Listens to signals that Java has no public way for: the window's size changed, the program was
 * stopped and goes on. Where the virtual machine has none, nothing is listened to; the program then
 * works but won't notice a changed size.
 */
final class Signals {
  private Signals() {}

  /** Runs the action whenever a signal comes, on a thread of the system's. */
  static void on(String signal, Runnable action) {
    try {
      // By name, for the compiler warns of the type itself and the strict build refuses warnings.
      Class<?> type = Class.forName("sun.misc.Signal");
      Class<?> handlerType = Class.forName("sun.misc.SignalHandler");
      Object handler =
          Proxy.newProxyInstance(
              Signals.class.getClassLoader(),
              new Class<?>[] {handlerType},
              (self, method, arguments) -> {
                switch (method.getName()) {
                  case "handle" -> action.run();
                  case "equals" -> {
                    return self == arguments[0];
                  }
                  case "hashCode" -> {
                    return System.identityHashCode(self);
                  }
                  case "toString" -> {
                    return "listens to " + signal;
                  }
                  default -> throw new UnsupportedOperationException(method.getName());
                }
                return null;
              });
      type.getMethod("handle", type, handlerType)
          .invoke(null, type.getConstructor(String.class).newInstance(signal), handler);
    } catch (ClassNotFoundException
        | NoSuchMethodException
        | IllegalAccessException
        | InstantiationException
        | InvocationTargetException e) {
      // The class comment says what is then missing.
    }
  }
}
