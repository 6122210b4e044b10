package dev.drafting.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.drafting.examples.chain.Chain;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.knit.Draft;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Random garments through the whole chain, and those that once came out wrong. */
class ChainTest {
  private static final int GARMENTS = 200;
  private static final long[] HAD_FAULTS = {
    4_730, 35_299, 97_502, 115_357, 118_932, 122_700, 159_201, 171_077, 199_840, 204_631, 217_250,
    241_567, 253_814, 256_334, 261_615, 280_063, 288_230, 347_410, 353_091, 354_187, 432_630,
    699_054, 764_576, 786_864, 794_284, 867_125, 871_607, 951_809, 963_777
  };

  @Test
  void nothingIsWrongWithAnyGarment() throws IOException {
    for (long seed = 0; seed < GARMENTS; seed++) {
      assertEquals(List.of(), Chain.faults(seed), "seed " + seed);
    }
  }

  /** Each had something wrong once. */
  @Test
  void nothingIsWrongAnyMoreWithGarmentsThatHadFaults() throws IOException {
    for (long seed : HAD_FAULTS) {
      assertEquals(List.of(), Chain.faults(seed), "seed " + seed);
    }
  }

  /** The demo garment is traced and not evened, so that its seams differ by up to 3 mm. */
  @Test
  void theJudgeSeesWhatDiffers() throws IOException {
    Draft vest = GarmentFolder.read(Vest.FOLDER).makes().values().iterator().next();
    List<String> faults = Chain.faults(vest);
    assertTrue(
        !faults.isEmpty() && faults.stream().allMatch(fault -> fault.startsWith("seam ")),
        faults.toString());
  }
}
