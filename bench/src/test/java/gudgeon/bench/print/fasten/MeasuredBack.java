package gudgeon.bench.print.fasten;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;

/** What stands on a page of a PDF file, in mm from its lower left corner. */
public final class MeasuredBack extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;

    /** A straight stroke. */
    public record Stroke(double x1, double y1, double x2, double y2) {
        public double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }
    }

    /** A closed curve with as much across as upwards: a circle. */
    public record Ring(double x, double y, double diameter) {}

    /** A page. */
    public record Sheet(double width, double height, List<Stroke> strokes, List<Ring> rings, String text) {}

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Ring> rings = new ArrayList<>();
    private final List<Point2D> path = new ArrayList<>();
    private boolean curved;
    private Point2D begun = new Point2D.Double();
    private Point2D now = new Point2D.Double();

    private MeasuredBack(PDPage page) {
        super(page);
    }

    public static List<Sheet> sheets(byte[] file) {
        try (PDDocument document = Loader.loadPDF(file)) {
            List<Sheet> sheets = new ArrayList<>();
            for (int number = 1; number <= document.getNumberOfPages(); number++) {
                PDPage page = document.getPage(number - 1);
                MeasuredBack measured = new MeasuredBack(page);
                measured.processPage(page);
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(number);
                text.setEndPage(number);
                sheets.add(new Sheet(
                        page.getMediaBox().getWidth() * MM_PER_POINT,
                        page.getMediaBox().getHeight() * MM_PER_POINT,
                        List.copyOf(measured.strokes),
                        List.copyOf(measured.rings),
                        text.getText(document)));
            }
            return sheets;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Point2D millimetres(double x, double y) {
        return new Point2D.Double(x * MM_PER_POINT, y * MM_PER_POINT);
    }

    @Override
    public void moveTo(float x, float y) {
        now = millimetres(x, y);
        begun = now;
        path.clear();
        path.add(now);
        curved = false;
    }

    @Override
    public void lineTo(float x, float y) {
        Point2D next = millimetres(x, y);
        strokes.add(new Stroke(now.getX(), now.getY(), next.getX(), next.getY()));
        path.add(next);
        now = next;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        curved = true;
        now = millimetres(x3, y3);
        path.add(now);
    }

    @Override
    public void closePath() {
        if (curved) {
            double left = path.stream().mapToDouble(Point2D::getX).min().orElseThrow();
            double right = path.stream().mapToDouble(Point2D::getX).max().orElseThrow();
            double low = path.stream().mapToDouble(Point2D::getY).min().orElseThrow();
            double high = path.stream().mapToDouble(Point2D::getY).max().orElseThrow();
            if (Math.abs(right - left - high + low) < 0.01) {
                rings.add(new Ring((left + right) / 2, (low + high) / 2, right - left));
            }
        } else {
            strokes.add(new Stroke(now.getX(), now.getY(), begun.getX(), begun.getY()));
        }
        now = begun;
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Double(now.getX() / MM_PER_POINT, now.getY() / MM_PER_POINT);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void endPath() {}

    @Override
    public void strokePath() {}

    @Override
    public void fillPath(int rule) {}

    @Override
    public void fillAndStrokePath(int rule) {}

    @Override
    public void shadingFill(COSName shading) {}
}
