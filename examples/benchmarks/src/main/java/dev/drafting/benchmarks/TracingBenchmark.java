package dev.drafting.benchmarks;

import dev.drafting.core.measure.Length;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetResult;
import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** An allowance round an untidied tracing of 10,000 points; both libraries take the points. */
@State(Scope.Benchmark)
public class TracingBenchmark {
  private static final Length ALLOWANCE = Length.mm(10);

  private final Tracing tracing = Tracing.of(10_000, Length.mm(0.5));
  private final Offset offset = tracing.offset(ALLOWANCE);
  private final FlatOutline flat = FlatOutline.of(tracing.coordinates(), ALLOWANCE);

  /** The library's own. */
  @Benchmark
  public OffsetResult drafting() {
    return offset.result();
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
