package dev.drafting.benchmarks;

import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetResult;
import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Allowances round curved outlines: ours, and those of JTS on chords that are as exact. */
@State(Scope.Benchmark)
public class OffsetBenchmark {
  /** The outline. */
  @Param public GarmentOutline outline = GarmentOutline.VEST_FRONT;

  private Offset even = outline.even();
  private Offset uneven = outline.uneven();
  private FlatOutline flat = FlatOutline.of(outline.segments(), GarmentOutline.ALLOWANCE);

  /** Takes the outlines out of the measurement. */
  @Setup
  public void prepare() {
    even = outline.even();
    uneven = outline.uneven();
    flat = FlatOutline.of(outline.segments(), GarmentOutline.ALLOWANCE);
  }

  /** The same allowance all round. */
  @Benchmark
  public OffsetResult drafting() {
    return even.result();
  }

  /** A distance for each edge, some inward. */
  @Benchmark
  public OffsetResult perEdge() {
    return uneven.result();
  }

  /** The buffer of JTS. */
  @Benchmark
  public Geometry buffer() {
    return flat.buffer();
  }

  /** The offset curve of JTS. */
  @Benchmark
  public Geometry offsetCurve() {
    return flat.offsetCurve();
  }
}
