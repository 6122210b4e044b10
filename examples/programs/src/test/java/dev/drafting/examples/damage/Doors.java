package dev.drafting.examples.damage;

import dev.drafting.examples.service.DraftService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** All doors of the library, and the service behind one of them. */
public final class Doors implements AutoCloseable {
  private static final Duration LONGEST = Duration.ofSeconds(60);

  private final DraftService service;
  private final List<Door> doors;

  private Doors(DraftService service, List<Door> doors) {
    this.service = service;
    this.doors = List.copyOf(doors);
  }

  /**
   * Opens all doors.
   *
   * @param garment a folder with a sound garment, its points traced
   * @param folder an empty folder, where what is sent is written
   * @return the doors
   * @throws IOException if the files cannot be written
   */
  public static Doors open(Path garment, Path folder) throws IOException {
    List<Door> doors = new ArrayList<>();
    for (String file : GarmentDoor.FILES) {
      doors.add(GarmentDoor.of(garment, Files.createDirectory(folder.resolve(file)), file));
    }
    doors.add(DraftDoor.of(garment));
    doors.add(OutlinesDoor.drawing(garment, folder));
    doors.add(OutlinesDoor.pieces(garment, folder));
    doors.add(SizesDoor.of(folder));
    DraftService service = DraftService.start(0, LONGEST);
    doors.add(RequestDoor.of(garment, service.port()));
    return new Doors(service, doors);
  }

  /**
   * The doors.
   *
   * @return an unmodifiable list
   */
  public List<Door> all() {
    return doors;
  }

  /**
   * The door of a name.
   *
   * @param name as {@link Door#name} says
   * @return the door
   */
  public Door door(String name) {
    return doors.stream().filter(door -> door.name().equals(name)).findFirst().orElseThrow();
  }

  @Override
  public void close() {
    service.close();
  }
}
