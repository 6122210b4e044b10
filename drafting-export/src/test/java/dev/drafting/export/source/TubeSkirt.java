package dev.drafting.export.source;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A tube skirt with a pocket and a pair of wrist warmers: a piece of every kind. */
final class TubeSkirt {
  static final String TRACING =
      """
      piece,edge,x,y
      front,hem,0,0
      front,hem,20,0
      front,side,20,0
      front,side,20,50
      front,waist,20,50
      front,waist,0,50
      back,side,100,50
      back,side,100,0
      back,hem,100,0
      back,hem,140,0
      back,side,140,0
      back,side,140,50
      back,waist,140,50
      back,waist,100,50
      pocket,top,0,12
      pocket,top,10,14
      pocket,right,10,14
      pocket,right,10,0
      pocket,bottom,10,0
      pocket,bottom,0,0
      pocket,left,0,0
      pocket,left,0,12
      wrist warmer,lower,0,0
      wrist warmer,lower,18,0
      wrist warmer,right end,18,0
      wrist warmer,right end,20,8
      wrist warmer,upper,20,8
      wrist warmer,upper,-2,8
      wrist warmer,left end,-2,8
      wrist warmer,left end,0,0
      """;
  static final String DESCRIPTION =
      """
      {
        "name": "Tube skirt",
        "pieces": [
          {"name": "front", "traced": "half on the fold", "cut": "on the fold"},
          {"name": "back", "traced": "whole", "cut": "on the fold", "straight": ["waist"]},
          {"name": "pocket", "traced": "as it lies", "cut": "single", "pointed": [["top", "left"]]},
          {"name": "wrist warmer", "traced": "as it lies", "cut": "in pairs", "cloth": "rib"}
        ],
        "seams": [
          {"name": "side", "join": ["front side", ["back side"]], "allowance": "1/4 in", "ease": "2 mm"},
          {"name": "wrist", "join": ["wrist warmer left end", "wrist warmer right end"],
            "allowance": "5 mm", "meet": "end to start"}
        ],
        "finishes": [
          {"edges": ["front waist", "back waist"], "finish": "folded band", "showing": "3 cm",
            "allowance": "7 mm", "cloth": "band"},
          {"edges": ["front hem", "back hem"], "finish": "hem twice", "turnIn": "9 mm", "depth": "2 cm"},
          {"edges": ["pocket top"], "finish": "faced", "allowance": "1 cm"},
          {"edges": ["pocket right", "pocket bottom", "pocket left"], "finish": "raw"},
          {"edges": ["wrist warmer lower"], "finish": "hem once", "depth": "1 cm"},
          {"edges": ["wrist warmer upper"], "finish": "wrapped binding", "showing": "6 mm", "turn": "2 mm"}
        ],
        "fabrics": [
          {"name": "Jersey", "structure": "jersey", "stretch": "40 %", "recovery": "95 %", "mass": "180 g/m²",
            "swatch": {"before": "50 cm", "across": "49 cm", "along": "48 cm"}, "curls": false,
            "oneWay": false, "uncertainty": "7 %"},
          {"name": "Rib", "structure": "rib", "gauge": [{"rest": "4 in", "pulled": "7 in", "relaxed": "4 in"}],
            "tension": "1 %"}
        ],
        "original": {"fabric": "rib", "girth": "84 cm", "seams": ["side"], "shoulders": "change"},
        "wearer": {"age": 9, "hips": "80 cm", "shoulders": "90 cm", "hand": "18 cm", "foot": "25 cm"},
        "strips": [
          {"opening": "waist", "rule": "shorter by", "length": "5 cm", "join": "6 mm"},
          {"opening": "upper", "rule": "ratio", "ratio": "90 %"}
        ],
        "makes": [{"name": "plain", "cloths": {"body": "jersey", "rib": "rib", "band": "RIB"}}]
      }
      """;

  private TubeSkirt() {}

  static void write(Path folder, String description) throws IOException {
    Files.writeString(folder.resolve("tracing.csv"), TRACING);
    Files.writeString(folder.resolve("garment.json"), description);
  }

  /** What is said to this description with something else in one place of it. */
  static String refused(Path folder, String from, String to) throws IOException {
    assertTrue(DESCRIPTION.contains(from), from);
    write(folder, DESCRIPTION.replace(from, to));
    return Refusal.of(() -> GarmentFolder.read(folder));
  }
}
