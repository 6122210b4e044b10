// For JShell: every type of the library by its simple name.
//   jshell --class-path examples/programs/target/programs-0.1.0-SNAPSHOT.jar --startup examples/notebooks/drafting.jsh

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
import dev.drafting.core.measure.Angle;
import dev.drafting.core.measure.Length;
import dev.drafting.core.measure.LengthUnit;
import dev.drafting.knit.Measure;
import dev.drafting.knit.Wearer;
import dev.drafting.knit.band.BandFinish;
import dev.drafting.knit.band.FlatWindow;
import dev.drafting.knit.band.FoldedBand;
import dev.drafting.knit.band.HeadOpening;
import dev.drafting.knit.band.Outcome;
import dev.drafting.knit.band.Strip;
import dev.drafting.knit.band.StripMark;
import dev.drafting.knit.band.StripRule;
import dev.drafting.knit.band.WrappedBinding;
import dev.drafting.knit.fabric.Ease;
import dev.drafting.knit.fabric.Fabric;
import dev.drafting.knit.fabric.GaugeReading;
import dev.drafting.knit.fabric.Recovery;
import dev.drafting.knit.fabric.StretchClass;
import dev.drafting.knit.fabric.Structure;
import dev.drafting.knit.hem.FlareLimit;
import dev.drafting.knit.hem.HemCheck;
import dev.drafting.knit.hem.TurnedHem;
import dev.drafting.knit.sewing.Caution;
import dev.drafting.knit.sewing.Cautions;
import dev.drafting.knit.sewing.OrderOfWork;
import dev.drafting.knit.sewing.Step;
import dev.drafting.knit.wording.Wording;
// left out: dev.drafting.core.CheckReturnValue (for tools that read the library)
