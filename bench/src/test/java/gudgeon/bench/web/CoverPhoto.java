package gudgeon.bench.web;

import gudgeon.rebuild.book.Point;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import javax.imageio.ImageIO;

/** A cover beside a sheet of paper, as a camera of known pose sees them: 760 mm off, leaning by 15 degrees. */
final class CoverPhoto {
    static final int WIDTH = 1600;
    static final int HEIGHT = 1200;
    private static final double FOCAL = 2200;
    private static final double AWAY_MM = 760;
    private static final double LEAN = Math.toRadians(15);

    /** Corners of the sheet in the frame of the cover: top left, top right, bottom right, bottom left; A4 on its side. */
    static final List<Point> SHEET =
            List.of(new Point(-312, 165), new Point(-15, 165), new Point(-15, -45), new Point(-312, -45));

    private CoverPhoto() {}

    /** Where a point of the face lies in the picture. */
    static Point2D seen(Point point) {
        double across = point.x() + 70;
        double up = (point.y() - 60) * Math.cos(LEAN);
        double away = AWAY_MM + (point.y() - 60) * Math.sin(LEAN);
        return new Point2D.Double(WIDTH / 2.0 + FOCAL * across / away, HEIGHT / 2.0 - FOCAL * up / away);
    }

    /** Takes the picture. */
    static void take(Path file, List<Point> outline, Collection<Point> holes) throws IOException {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(new Color(0x6b5a48));
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        pen.setColor(Color.WHITE);
        pen.fill(shape(SHEET));
        pen.setColor(new Color(0xa9adb0));
        pen.fill(shape(outline));
        pen.setColor(Color.DARK_GRAY);
        pen.setStroke(new BasicStroke(2));
        pen.draw(shape(outline));
        for (Point hole : holes) {
            Point2D at = seen(hole);
            pen.fill(new Ellipse2D.Double(at.getX() - 9, at.getY() - 9, 18, 18));
        }
        pen.dispose();
        ImageIO.write(picture, "png", file.toFile());
    }

    private static Path2D shape(List<Point> corners) {
        Path2D shape = new Path2D.Double();
        for (Point corner : corners) {
            Point2D at = seen(corner);
            if (shape.getCurrentPoint() == null) {
                shape.moveTo(at.getX(), at.getY());
            } else {
                shape.lineTo(at.getX(), at.getY());
            }
        }
        shape.closePath();
        return shape;
    }
}
