package gudgeon.store.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A picture the right way up, in memory.
 *
 * @param image its points, red, green and blue
 */
record Picture(BufferedImage image) {
    /** Most points of a picture that is read. */
    private static final long MOST_POINTS = 40_000_000;

    private static final float QUALITY = 0.85f;

    /**
     * Reads a JPEG or PNG. The size is read from its head before anything is decoded.
     *
     * @param longest longest side wanted, in points; a bigger picture is made smaller
     */
    static Picture read(byte[] bytes, int longest) throws PhotoFault {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format(bytes)).next();
        try {
            reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)), true, true);
            long width = reader.getWidth(0);
            long height = reader.getHeight(0);
            if (width * height > MOST_POINTS) {
                throw new PhotoFault("The photo has " + width + " by " + height
                        + " points, more than 40 million. Make it smaller and send it again.");
            }
            BufferedImage decoded = decoded(reader, (int) (Math.max(width, height) / longest));
            return new Picture(upright(smaller(decoded, longest), orientation(bytes)));
        } catch (IOException | RuntimeException damaged) {
            // the platform's decoders answer a damaged file with whatever runs into it first
            throw new PhotoFault("The photo is damaged or of a rare kind and can't be read (" + damaged.getMessage()
                    + "). Take it again, or save it as an ordinary JPEG.");
        } finally {
            reader.dispose();
        }
    }

    private static String format(byte[] bytes) throws PhotoFault {
        if (startsWith(bytes, 0xFF, 0xD8, 0xFF)) {
            return "jpeg";
        }
        if (startsWith(bytes, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return "png";
        }
        throw new PhotoFault("The file is neither a JPEG nor a PNG picture. Send the photo as one of these.");
    }

    private static boolean startsWith(byte[] bytes, int... head) {
        for (int n = 0; n < head.length; n++) {
            if (n >= bytes.length || (bytes[n] & 0xFF) != head[n]) {
                return false;
            }
        }
        return true;
    }

    /** Decodes every so many'th point only where the picture is far bigger than wanted, which spares memory. */
    private static BufferedImage decoded(ImageReader reader, int timesTooBig) throws IOException {
        List<String> warnings = new ArrayList<>();
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
        ImageReadParam wanted = reader.getDefaultReadParam();
        int step = Math.max(1, timesTooBig);
        wanted.setSourceSubsampling(step, step, 0, 0);
        BufferedImage image = reader.read(0, wanted);
        // the platform's own words for a file that ends too soon, of which it shows the rest in grey
        if (warnings.stream().anyMatch(warning -> warning.contains("Missing EOI"))) {
            throw new IOException("it breaks off");
        }
        return image;
    }

    /** In halves, so that no point is passed over. */
    private static BufferedImage smaller(BufferedImage image, int longest) {
        BufferedImage now = image;
        while (Math.max(now.getWidth(), now.getHeight()) > longest) {
            double scale = Math.max(0.5, (double) longest / Math.max(now.getWidth(), now.getHeight()));
            int width = Math.max(1, (int) Math.round(now.getWidth() * scale));
            int height = Math.max(1, (int) Math.round(now.getHeight() * scale));
            now = drawn(
                    now,
                    width,
                    height,
                    AffineTransform.getScaleInstance(
                            (double) width / now.getWidth(), (double) height / now.getHeight()));
        }
        return now;
    }

    private static int orientation(byte[] bytes) throws IOException {
        try {
            ExifIFD0Directory exif = ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes))
                    .getFirstDirectoryOfType(ExifIFD0Directory.class);
            Integer tag = exif == null ? null : exif.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
            return tag == null ? 1 : tag;
        } catch (ImageProcessingException unreadable) {
            return 1;
        }
    }

    /** Turns a picture by its orientation tag, 1 to 8; source: Exif 2.32, 4.6.4, tag 274. */
    private static BufferedImage upright(BufferedImage image, int orientation) {
        int w = image.getWidth();
        int h = image.getHeight();
        AffineTransform turn = switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
        boolean onItsSide = orientation >= 5 && orientation <= 8;
        return drawn(image, onItsSide ? h : w, onItsSide ? w : h, turn);
    }

    /** On white, since a JPEG has nothing that shows through. */
    private static BufferedImage drawn(BufferedImage image, int width, int height, AffineTransform how) {
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = drawn.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.drawImage(image, how, null);
        pen.dispose();
        return drawn;
    }

    /** The same picture with no side longer than that. */
    Picture noLongerThan(int longest) {
        return new Picture(smaller(image, longest));
    }

    /** The picture as JPEG with nothing but the points: no place, time, camera or thumbnail. */
    byte[] jpeg() throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
