package dev.drafting.core;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks packages whose methods return new values: a result that is dropped is a mistake.
 *
 * <p>Values here never change. {@code edge.withFinish(finish);} alone does nothing, so tools that
 * read this annotation report it.
 *
 * @since 0.1
 */
@Stable
@Documented
@Retention(RetentionPolicy.CLASS)
@Target({ElementType.PACKAGE, ElementType.TYPE, ElementType.METHOD})
public @interface CheckReturnValue {}
