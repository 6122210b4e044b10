package dev.drafting.core;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks types that are kept: until the next main version nothing of them is taken away or changed
 * in what it gives, and what extends them goes on compiling.
 *
 * <p>Every public type is either {@link Stable} or {@link Experimental}.
 *
 * @since 0.1
 */
@Documented
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
public @interface Stable {}
