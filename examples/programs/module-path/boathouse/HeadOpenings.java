package boathouse;

import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import java.nio.file.Path;

/** Says for each make of a garment whether it goes over its wearer's head. */
public final class HeadOpenings {
  private HeadOpenings() {}

  /**
   * Reads and judges a garment.
   *
   * @param folders the folder of the garment, alone
   */
  public static void main(String[] folders) {
    Garment garment = GarmentFolder.read(Path.of(folders[0]));
    garment
        .makes()
        .forEach(
            (make, draft) ->
                draft
                    .headOpening()
                    .ifPresent(
                        neck ->
                            System.out.println(
                                make
                                    + (neck.passes() ? ": goes" : ": does not go")
                                    + " over the head")));
  }
}
