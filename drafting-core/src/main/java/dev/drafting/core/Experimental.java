package dev.drafting.core;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks types and methods that may still change from one version to the next, with a line in the
 * changelog: what they do is tested like everything else, but their names and arguments are not
 * settled.
 *
 * <p>Every public type is either {@link Stable} or {@link Experimental}.
 *
 * @since 0.1
 */
@Documented
@Retention(RetentionPolicy.CLASS)
@Target({ElementType.TYPE, ElementType.METHOD})
public @interface Experimental {}
