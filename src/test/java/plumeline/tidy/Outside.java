package plumeline.tidy;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// Marks a check against something that isn't us, and says what.
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface Outside {
    /// Who says so: author, title, standard, program and version.
    ///
    /// @return the source
    String source();

    /// Where in it: page, table, equation, file.
    ///
    /// @return the place
    String place();

    /// What kind of source: closed form, published example, standard's table, other program, measurement.
    ///
    /// @return the kind
    String kind();

    /// How many digits the source prints; the tolerance follows from it.
    ///
    /// @return number of digits
    int printedDigits();
}
