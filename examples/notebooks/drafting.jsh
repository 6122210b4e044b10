// For JShell: every type of the library by its simple name.
//   jshell --class-path examples/programs/target/programs-0.1.0-SNAPSHOT.jar --startup examples/notebooks/drafting.jsh

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import dev.drafting.core.alter.Alteration;
import dev.drafting.core.alter.AlterationRecord;
import dev.drafting.core.alter.EdgeChange;
import dev.drafting.core.alter.EdgePlace;
import dev.drafting.core.alter.WantedMeasure;
import dev.drafting.core.assembly.Assembly;
import dev.drafting.core.assembly.Junction;
import dev.drafting.core.assembly.Opening;
import dev.drafting.core.assembly.OpeningPart;
import dev.drafting.core.assembly.OpeningStation;
import dev.drafting.core.assembly.PatternTruing;
import dev.drafting.core.assembly.SeamCheck;
import dev.drafting.core.assembly.TruedPattern;
import dev.drafting.core.cut.ChalkPoint;
import dev.drafting.core.cut.ChalkTable;
import dev.drafting.core.cut.CutItem;
import dev.drafting.core.cut.CutNotch;
import dev.drafting.core.cut.CutPiece;
import dev.drafting.core.cut.CutPlan;
import dev.drafting.core.cut.DerivedLine;
import dev.drafting.core.finding.DraftingException;
import dev.drafting.core.finding.Finding;
import dev.drafting.core.finding.Place;
import dev.drafting.core.finding.Remedy;
import dev.drafting.core.finding.Severity;
import dev.drafting.core.geometry.Arc;
import dev.drafting.core.geometry.Box;
import dev.drafting.core.geometry.Crossing;
import dev.drafting.core.geometry.Cubic;
import dev.drafting.core.geometry.Curve;
import dev.drafting.core.geometry.JtsBridge;
import dev.drafting.core.geometry.Line;
import dev.drafting.core.geometry.Nearest;
import dev.drafting.core.geometry.Point;
import dev.drafting.core.geometry.Polyline;
import dev.drafting.core.geometry.Segment;
import dev.drafting.core.geometry.Transform;
import dev.drafting.core.geometry.Vector;
import dev.drafting.core.grade.GradeRule;
import dev.drafting.core.grade.Grading;
import dev.drafting.core.grade.SeamGrowth;
import dev.drafting.core.lay.Cloth;
import dev.drafting.core.lay.LaidPiece;
import dev.drafting.core.lay.Lay;
import dev.drafting.core.lay.LayPlan;
import dev.drafting.core.lay.Remnant;
import dev.drafting.core.lay.StripLay;
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.core.offset.CornerSide;
import dev.drafting.core.offset.CornerTreatment;
import dev.drafting.core.offset.Offset;
import dev.drafting.core.offset.OffsetEdge;
import dev.drafting.core.offset.OffsetPart;
import dev.drafting.core.offset.OffsetResult;
import dev.drafting.core.offset.OffsetTag;
import dev.drafting.core.offset.Trimming;
import dev.drafting.core.pattern.Corner;
import dev.drafting.core.pattern.Cutting;
import dev.drafting.core.pattern.Edge;
import dev.drafting.core.pattern.EdgeRef;
import dev.drafting.core.pattern.FacedEdge;
import dev.drafting.core.pattern.Finish;
import dev.drafting.core.pattern.FoldEdge;
import dev.drafting.core.pattern.Fullness;
import dev.drafting.core.pattern.LineRole;
import dev.drafting.core.pattern.MarkingLine;
import dev.drafting.core.pattern.Notch;
import dev.drafting.core.pattern.Patch;
import dev.drafting.core.pattern.Pattern;
import dev.drafting.core.pattern.Piece;
import dev.drafting.core.pattern.Placket;
import dev.drafting.core.pattern.Profile;
import dev.drafting.core.pattern.ProfileLine;
import dev.drafting.core.pattern.RawEdge;
import dev.drafting.core.pattern.Reshaping;
import dev.drafting.core.pattern.Seam;
import dev.drafting.core.pattern.SeamFinish;
import dev.drafting.core.pattern.SharedPaper;
import dev.drafting.core.template.Choice;
import dev.drafting.core.template.Dimension;
import dev.drafting.core.template.Dimensions;
import dev.drafting.core.template.GarmentTemplate;
import dev.drafting.core.template.SizeRun;
import dev.drafting.core.template.TemplateContract;
import dev.drafting.core.template.TemplateContractTest;
import dev.drafting.core.template.Templates;
import dev.drafting.core.trace.DrawnRectangle;
import dev.drafting.core.trace.EdgeReport;
import dev.drafting.core.trace.Extent;
import dev.drafting.core.trace.Lopsidedness;
import dev.drafting.core.trace.RefusedPoint;
import dev.drafting.core.trace.RepeatedTracing;
import dev.drafting.core.trace.TapedHalf;
import dev.drafting.core.trace.TracedEdge;
import dev.drafting.core.trace.TracedStretch;
import dev.drafting.core.trace.Tracing;
import dev.drafting.core.trace.TruedPiece;
import dev.drafting.core.trace.Truing;
import dev.drafting.core.trace.TruingReport;
import dev.drafting.core.trace.UnnamedTracing;
import dev.drafting.export.Export;
import dev.drafting.export.Progress;
import dev.drafting.export.WrittenFile;
import dev.drafting.export.csv.ChalkingFile;
import dev.drafting.export.csv.CutListFile;
import dev.drafting.export.csv.MeasuresFile;
import dev.drafting.export.csv.StripsFile;
import dev.drafting.export.drawing.Anchor;
import dev.drafting.export.drawing.ChangeDrawing;
import dev.drafting.export.drawing.DraftDrawing;
import dev.drafting.export.drawing.Drawing;
import dev.drafting.export.drawing.Element;
import dev.drafting.export.drawing.Format;
import dev.drafting.export.drawing.FreeRoom;
import dev.drafting.export.drawing.GaugeDrawing;
import dev.drafting.export.drawing.Group;
import dev.drafting.export.drawing.Label;
import dev.drafting.export.drawing.LayDrawing;
import dev.drafting.export.drawing.Legend;
import dev.drafting.export.drawing.Lettering;
import dev.drafting.export.drawing.NestedDrawing;
import dev.drafting.export.drawing.PieceDrawing;
import dev.drafting.export.drawing.PlainName;
import dev.drafting.export.drawing.StepDrawing;
import dev.drafting.export.drawing.Stroke;
import dev.drafting.export.drawing.StrokeStyle;
import dev.drafting.export.drawing.TracingDrawing;
import dev.drafting.export.drawing.TransferDrawing;
import dev.drafting.export.dxf.DxfFormat;
import dev.drafting.export.dxf.PieceFile;
import dev.drafting.export.folder.FileSet;
import dev.drafting.export.hpgl.HpglFormat;
import dev.drafting.export.pdf.PagesPdf;
import dev.drafting.export.pdf.Paper;
import dev.drafting.export.pdf.ProjectorPdf;
import dev.drafting.export.pdf.TiledPdf;
import dev.drafting.export.pdf.WidePdf;
import dev.drafting.export.png.PngFormat;
import dev.drafting.export.sheet.MakingUpSheet;
import dev.drafting.export.sheet.Tape;
import dev.drafting.export.source.CutOutlines;
import dev.drafting.export.source.Garment;
import dev.drafting.export.source.GarmentFolder;
import dev.drafting.export.source.GradeTable;
import dev.drafting.export.source.SizeTable;
import dev.drafting.export.store.StoredDraft;
import dev.drafting.export.store.StoredTypes;
import dev.drafting.export.svg.SvgFormat;
import dev.drafting.export.svg.SvgPicture;
import dev.drafting.knit.Brief;
import dev.drafting.knit.Comparison;
import dev.drafting.knit.CopyCheck;
import dev.drafting.knit.Draft;
import dev.drafting.knit.Goods;
import dev.drafting.knit.Measure;
import dev.drafting.knit.Wearer;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.BandFit;
import dev.drafting.knit.band.BodyPart;
import dev.drafting.knit.band.BodyPassage;
import dev.drafting.knit.band.Casing;
import dev.drafting.knit.band.CasingCheck;
import dev.drafting.knit.band.FacedStrip;
import dev.drafting.knit.band.FlatWindow;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.HeadGirths;
import dev.drafting.knit.band.Intent;
import dev.drafting.knit.band.LoopRange;
import dev.drafting.knit.band.MarkSpacing;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.SewnResult;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripGrain;
import dev.drafting.knit.band.StripMark;
import dev.drafting.knit.band.StripPiece;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.band.StripSection;
import dev.drafting.knit.band.TapedEdge;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.ClothLength;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.FabricChange;
import dev.drafting.knit.fabric.FabricComparison;
import dev.drafting.knit.fabric.GaugeMean;
import dev.drafting.knit.fabric.GaugeReading;
import dev.drafting.knit.fabric.GirthBounds;
import dev.drafting.knit.fabric.Original;
import dev.drafting.knit.fabric.Recovery;
import dev.drafting.knit.fabric.Shrinkage;
import dev.drafting.knit.fabric.StretchClass;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.fabric.TypicalRange;
import dev.drafting.knit.garment.BabyTop;
import dev.drafting.knit.garment.Beanie;
import dev.drafting.knit.garment.BoxerBriefs;
import dev.drafting.knit.garment.ChildsTShirt;
import dev.drafting.knit.garment.HalfCircleSkirt;
import dev.drafting.knit.garment.Leggings;
import dev.drafting.knit.garment.RaglanSweatshirt;
import dev.drafting.knit.garment.SleevelessTop;
import dev.drafting.knit.garment.StraightSkirt;
import dev.drafting.knit.garment.TShirt;
import dev.drafting.knit.hem.FlareLimit;
import dev.drafting.knit.hem.HemCheck;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.Cautions;
import dev.drafting.knit.sewing.Construction;
import dev.drafting.knit.sewing.Detail;
import dev.drafting.knit.sewing.Machines;
import dev.drafting.knit.sewing.Needle;
import dev.drafting.knit.sewing.OrderOfWork;
import dev.drafting.knit.sewing.SeamClass;
import dev.drafting.knit.sewing.SeamTape;
import dev.drafting.knit.sewing.SewingChoices;
import dev.drafting.knit.sewing.SewingPlan;
import dev.drafting.knit.sewing.SewnLine;
import dev.drafting.knit.sewing.Step;
import dev.drafting.knit.sewing.Stitch;
import dev.drafting.knit.sewing.StitchType;
import dev.drafting.knit.size.Body;
import dev.drafting.knit.size.BodyMeasure;
import dev.drafting.knit.size.BodyRule;
import dev.drafting.knit.size.BodySizes;
import dev.drafting.knit.size.Fit;
import dev.drafting.knit.size.FittedTemplate;
import dev.drafting.knit.size.MadeToMeasure;
import dev.drafting.knit.wording.Wording;
// left out: dev.drafting.core.CheckReturnValue (for tools that read the library)
// left out: dev.drafting.core.Experimental (for tools that read the library)
// left out: dev.drafting.core.Stable (for tools that read the library)

// Helpers for looking at a draft.

/** Draws a draft, or a drawing, into a file and says where it is; opens it where there is a screen. */
Path show(Object shown) throws Exception {
  Drawing drawing = DraftDrawing.withLegend(shown instanceof Draft draft ? DraftDrawing.of(draft) : (Drawing) shown);
  Path folder = Files.createDirectories(Path.of(System.getProperty("java.io.tmpdir"), "drafting"));
  Path file = folder.resolve(PlainName.of(drawing.title()) + ".svg");
  try (java.io.OutputStream bytes = Files.newOutputStream(file)) {
    SvgFormat.of().write(drawing, bytes);
  }
  if (java.awt.Desktop.isDesktopSupported()) {
    java.awt.Desktop.getDesktop().browse(file.toUri());
  }
  return file;
}

/** Prints findings as a table: how bad, where, why, and what would help. */
void table(List<Finding> findings) {
  for (Finding finding : findings) {
    System.out.printf(java.util.Locale.ROOT, "%-8s %-20s %s%n", finding.severity(), finding.place(), finding.reason());
    finding.remedies().forEach(remedy -> System.out.printf("%-29s - %s%n", "", remedy.text()));
  }
  System.out.println(findings.isEmpty() ? "nothing found" : findings.size() + " found");
}

/** How long something takes, the shortest of twenty times. */
java.time.Duration time(Runnable work) {
  long shortest = Long.MAX_VALUE;
  for (int i = 0; i < 20; i++) {
    long start = System.nanoTime();
    work.run();
    shortest = Math.min(shortest, System.nanoTime() - start);
  }
  return java.time.Duration.ofNanos(shortest);
}
