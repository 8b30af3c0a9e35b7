package rickyard.intake.grid.pdf;

import java.awt.geom.Path2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.apache.pdfbox.contentstream.operator.DrawObject;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorProcessor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorN;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingColorSpace;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceCMYKColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceGrayColor;
import org.apache.pdfbox.contentstream.operator.color.SetNonStrokingDeviceRGBColor;
import org.apache.pdfbox.contentstream.operator.color.SetStrokingColor;
import org.apache.pdfbox.contentstream.operator.color.SetStrokingColorN;
import org.apache.pdfbox.contentstream.operator.color.SetStrokingColorSpace;
import org.apache.pdfbox.contentstream.operator.color.SetStrokingDeviceCMYKColor;
import org.apache.pdfbox.contentstream.operator.color.SetStrokingDeviceGrayColor;
import org.apache.pdfbox.contentstream.operator.color.SetStrokingDeviceRGBColor;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;
import rickyard.intake.grid.CellText;
import rickyard.intake.grid.ReadLimits;
import rickyard.intake.grid.UnreadableException;

/** Collects every character of a page with place, size and colour, and all that is painted. */
final class PageMarks extends PDFTextStripper {
  private static final double SMALLEST = 1;

  private final ReadLimits limits;
  private final Set<String> cautions = new TreeSet<>();
  private Canvas canvas = new Canvas(new PDRectangle());
  private Painting painting = new Painting(this, canvas);
  private List<Mark> marks = new ArrayList<>();
  private double spaceWidth;
  private String spelled = "";
  private BiConsumer<Integer, Drawn> onPage = (number, drawn) -> {};
  private final Deque<Boolean> layersOff = new ArrayDeque<>();
  private Layers layers = Layers.NONE;
  private int glyphs;
  private int operations;

  PageMarks(ReadLimits limits) throws IOException {
    this.limits = limits;
    followColours();
    followPaths();
  }

  private void followColours() {
    addOperator(new SetNonStrokingColor(this));
    addOperator(new SetNonStrokingColorN(this));
    addOperator(new SetNonStrokingColorSpace(this));
    addOperator(new SetNonStrokingDeviceCMYKColor(this));
    addOperator(new SetNonStrokingDeviceGrayColor(this));
    addOperator(new SetNonStrokingDeviceRGBColor(this));
    addOperator(new SetStrokingColor(this));
    addOperator(new SetStrokingColorN(this));
    addOperator(new SetStrokingColorSpace(this));
    addOperator(new SetStrokingDeviceCMYKColor(this));
    addOperator(new SetStrokingDeviceGrayColor(this));
    addOperator(new SetStrokingDeviceRGBColor(this));
  }

  private void followPaths() {
    on("re", operands -> painting.rectangle(operands));
    on("m", operands -> painting.move(operands));
    on("l", operands -> painting.line(operands));
    on("c", operands -> painting.curve(operands, false, false));
    on("v", operands -> painting.curve(operands, true, false));
    on("y", operands -> painting.curve(operands, false, true));
    on("h", operands -> painting.close());
    on("W", operands -> painting.clip(Path2D.WIND_NON_ZERO));
    on("W*", operands -> painting.clip(Path2D.WIND_EVEN_ODD));
    on("n", operands -> painting.end(false, Path2D.WIND_NON_ZERO, false));
    for (String fill : List.of("f", "F", "B", "b")) {
      ending(fill, Path2D.WIND_NON_ZERO);
    }
    for (String fill : List.of("f*", "B*", "b*")) {
      ending(fill, Path2D.WIND_EVEN_ODD);
    }
    on("S", operands -> painting.end(false, Path2D.WIND_NON_ZERO, true));
    on(
        "s",
        operands -> {
          painting.close();
          painting.end(false, Path2D.WIND_NON_ZERO, true);
        });
    on("sh", operands -> painting.shade());
    on("BI", operands -> painting.picture(false));
    DrawObject forms = new DrawObject(this);
    on(
        "Do",
        operands -> {
          if (!isPicture(operands)) {
            forms.process(Operator.getOperator("Do"), operands);
          }
        });
  }

  private void ending(String name, int rule) {
    boolean stroke = !name.toLowerCase(java.util.Locale.ROOT).startsWith("f");
    on(
        name,
        operands -> {
          if (name.startsWith("b")) {
            painting.close();
          }
          painting.end(true, rule, stroke);
        });
  }

  @FunctionalInterface
  private interface Step {
    void take(List<COSBase> operands) throws IOException;
  }

  private void on(String name, Step step) {
    addOperator(
        new OperatorProcessor(this) {
          @Override
          public void process(Operator operator, List<COSBase> operands) throws IOException {
            step.take(operands);
          }

          @Override
          public String getName() {
            return name;
          }
        });
  }

  /** A page as it was drawn. */
  record Drawn(List<Mark> marks, Canvas canvas) {}

  /** Follows all pages; each is handed over with its number from 1 as soon as it is drawn. */
  void draw(PDDocument document, BiConsumer<Integer, Drawn> onPage) throws IOException {
    for (PDPage page : document.getPages()) {
      if (!page.hasContents() && !page.getAnnotations().isEmpty()) {
        // The library passes over a page that has nothing but notes on it.
        byte[] nothing = {' '};
        page.setContents(new PDStream(document, new ByteArrayInputStream(nothing)));
      }
    }
    this.onPage = onPage;
    layers = Layers.of(document);
    processPages(document.getPages());
  }

  /** Follows one page from first to last operation, notes and form fields last. */
  @Override
  public void processPage(PDPage page) throws IOException {
    canvas = new Canvas(page.getCropBox());
    painting = new Painting(this, canvas);
    marks = new ArrayList<>();
    layersOff.clear();
    super.processPage(page);
    for (PDAnnotation note : page.getAnnotations()) {
      if (!note.isHidden() && !note.isNoView() && !"Popup".equals(note.getSubtype())) {
        showAnnotation(note);
      }
    }
    onPage.accept(getCurrentPageNo(), new Drawn(marks, canvas));
  }

  Set<String> cautions() {
    return cautions;
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, @Nullable COSDictionary properties) {
    layersOff.push(COSName.OC.equals(tag) && properties != null && layers.isOff(properties));
    super.beginMarkedContentSequence(tag, properties);
  }

  @Override
  public void endMarkedContentSequence() {
    layersOff.poll();
    super.endMarkedContentSequence();
  }

  @Override
  protected void writePage() {}

  @Override
  protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
    if (++operations > limits.operations()) {
      throw new UnreadableException(
          "too-complex", "The PDF is drawn in more steps than are read; ask for another file.");
    }
    super.processOperator(operator, operands);
  }

  @Override
  protected void operatorException(Operator operator, List<COSBase> operands, IOException broken)
      throws IOException {
    cautions.add("damaged-parts");
    super.operatorException(operator, operands, broken);
  }

  @Override
  protected void showGlyph(Matrix frame, PDFont font, int code, Vector advance) throws IOException {
    if (++glyphs > limits.glyphs()) {
      throw new UnreadableException(
          "too-long", "The PDF has more than " + limits.glyphs() + " characters.");
    }
    spelled = "";
    spaceWidth = 0;
    super.showGlyph(frame, font, code, advance);
    String known = font.toUnicode(code);
    String text = known == null ? String.valueOf(CellText.UNKNOWN) : spelled;
    // A character that stands for nothing leaves nothing; one without a name is unknown.
    if (!text.isEmpty()) {
      mark(text, frame, font, advance);
    }
  }

  @Override
  protected void processTextPosition(TextPosition position) {
    spelled = position.getUnicode();
    spaceWidth = position.getWidthOfSpace();
  }

  private void mark(String text, Matrix frame, PDFont font, Vector advance) {
    double along = Math.hypot(frame.getScaleX(), frame.getShearY());
    double size = Math.hypot(frame.getShearX(), frame.getScaleY()) * sizeFactor(font);
    double width = Math.max(Math.abs(advance.getX()) * along, size * 0.01);
    double angle = StrictMath.toDegrees(StrictMath.atan2(frame.getShearY(), frame.getScaleX()));
    boolean unseen =
        !(size >= SMALLEST && width < 1e5)
            || layersOff.contains(true)
            || clippedAway(frame, advance)
            || leavesNoTrace();
    marks.add(
        new Mark(
            text,
            frame.getTranslateX(),
            frame.getTranslateY(),
            snapped(angle),
            Double.isFinite(width) ? width : 1,
            Double.isFinite(size) && size > 0 ? size : 1,
            spaceWidth,
            canvas.paints(),
            inkColour(),
            unseen));
  }

  /** Whole degrees; a hair's breadth off a right angle counts as that angle. */
  private static int snapped(double angle) {
    long quarter = Math.round(angle / 90) * 90;
    return (int) Math.floorMod(Math.abs(angle - quarter) < 3 ? quarter : Math.round(angle), 360L);
  }

  /** Fonts drawn by hand have units of their own; their box tells how large they come out. */
  private static double sizeFactor(PDFont font) {
    if (font instanceof PDType3Font drawn) {
      PDRectangle box = drawn.getFontBBox();
      double factor =
          box == null ? 0 : Math.abs(box.getHeight() * drawn.getFontMatrix().getScaleY());
      return factor > 0 ? factor : 1;
    }
    return 1;
  }

  private boolean clippedAway(Matrix frame, Vector advance) {
    java.awt.geom.Point2D middle = frame.transformPoint(advance.getX() / 2, 0.25f);
    return !getGraphicsState().getCurrentClippingPath().contains(middle);
  }

  private boolean leavesNoTrace() {
    PDGraphicsState state = getGraphicsState();
    RenderingMode mode = state.getTextState().getRenderingMode();
    double alpha = mode.isFill() ? state.getNonStrokeAlphaConstant() : state.getAlphaConstant();
    return !(mode.isFill() || mode.isStroke()) || alpha < 0.05;
  }

  private OptionalInt inkColour() {
    PDGraphicsState state = getGraphicsState();
    RenderingMode mode = state.getTextState().getRenderingMode();
    if (mode.isFill() && mode.isStroke()) {
      // Two colours: one of them shows on any ground.
      return OptionalInt.empty();
    }
    return Painting.rgb(mode.isFill() ? state.getNonStrokingColor() : state.getStrokingColor());
  }

  private boolean isPicture(List<COSBase> operands) {
    if (operands.isEmpty()
        || !(operands.get(0) instanceof COSName name)
        || !getResources().isImageXObject(name)) {
      return false;
    }
    COSBase all = getResources().getCOSObject().getDictionaryObject(COSName.XOBJECT);
    boolean opaque =
        all instanceof COSDictionary named
            && named.getDictionaryObject(name) instanceof COSStream image
            && image.getDictionaryObject(COSName.SMASK) == null
            && image.getDictionaryObject(COSName.MASK) == null
            && !image.getBoolean(COSName.IMAGE_MASK, false);
    painting.picture(opaque);
    return true;
  }
}
