/**
 * A sample of the library inside other software: a small service that takes a garment folder as a
 * zip and answers with findings and drawings. Begin with {@link
 * dev.drafting.examples.service.DraftService}.
 */
@NullMarked
package dev.drafting.examples.service;

import org.jspecify.annotations.NullMarked;
