package dev.drafting.core.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Places of tracings of up to a million points at which an outline was once lost. */
class LongTracingTest {
  /**
   * Three strands within 0.00004 mm of each other, seven metres from the origin: a stretch of that
   * length that leads nowhere was taken for a part of the boundary.
   */
  @Test
  void strandsThatLieOnEachOtherLoseNoOutline() {
    double[] traced = {
      -7491.558478745649,
      -2222.2008933121992,
      -7491.556986080482,
      -2222.239316932251,
      -7491.552326035552,
      -2222.2768011795547,
      -7491.55537458003,
      -2222.316572283656,
      -7491.5495180029475,
      -2222.353701939246,
      -7491.552145992661,
      -2222.3933487154322,
      -7491.550469911335,
      -2222.431718886848,
      -7491.548812896579,
      -2222.4700949042253,
      -7491.550116949469,
      -2222.5093495678548,
      -7491.542358310802,
      -2222.5459157869714,
      -7491.5436136144035,
      -2222.585156381756,
      -7491.54430274727,
      -2222.624229222559,
      -7491.540788004943,
      -2222.662055031585,
      -7400,
      -2232.66,
      -7400,
      -2212.2,
      -7491.558478745649,
      -2222.2008933121992
    };
    Curve outline = Curve.from(Polyline.of(traced));
    OffsetResult result =
        Offset.of(List.of(OffsetEdge.of("outline", outline, Length.mm(1)))).result();
    assertTrue(JtsBridge.toJts(result.outline(), Length.mm(1e-3)).isSimple());
    // a strip 1 mm wide, and a square millimetre at each of four mitres
    double wanted = outline.areaSquareMm() + outline.length().toMm() + 4;
    assertEquals(wanted, result.outline().areaSquareMm(), 0.5);
  }
}
