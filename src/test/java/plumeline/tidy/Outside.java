package plumeline.tidy;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/// Marks a test that agrees with something that is not us. Every physics front class has at least one.
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
public @interface Outside {
    /// Names the source: author, title, edition; or a program and its version; "common practice"; "from memory of …".
    ///
    /// @return the source
    String source();

    /// Names the place in the source: page, equation, table, clause; empty where there is none.
    ///
    /// @return the place
    String place() default "";

    /// Says what kind of source it is: closed form, conserved quantity, worked example, standard, program, measurement.
    ///
    /// @return the kind
    String kind();

    /// Says how many significant digits the source prints; 0 where it is exact.
    ///
    /// @return the digits
    int printedDigits() default 0;
}
