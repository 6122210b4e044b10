/** A sample of another project that uses the library on the module path. */
module boathouse {
  requires dev.drafting.core;
  requires dev.drafting.knit;
  requires dev.drafting.export;
}
