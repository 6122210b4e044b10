package dev.drafting.export.dxf;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a type that is written to, whose methods return itself to go on with. */
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.TYPE)
@interface CanIgnoreReturnValue {}
