package gudgeon.store.photo;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.lang.Rational;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.GpsDirectory;
import gudgeon.store.photo.Photos.Copy;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photos kept by the hash of their content. */
class PhotosTest {
    private static final int WIDE = 120;
    private static final int HIGH = 80;

    @TempDir
    Path folder;

    /** A picture whose top left quarter is red, top right green, bottom left blue, bottom right white. */
    private static BufferedImage quarters() {
        BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < WIDE; x++) {
            for (int y = 0; y < HIGH; y++) {
                Color top = x < WIDE / 2 ? Color.RED : Color.GREEN;
                Color bottom = x < WIDE / 2 ? Color.BLUE : Color.WHITE;
                image.setRGB(x, y, (y < HIGH / 2 ? top : bottom).getRGB());
            }
        }
        return image;
    }

    private static byte[] encoded(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image, format, bytes)).isTrue();
        return bytes.toByteArray();
    }

    /** A JPEG with an Exif block: orientation and a place, latitude 12 degrees north. */
    private static byte[] withExif(byte[] jpeg, int orientation) throws IOException {
        ByteArrayOutputStream block = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(block);
        out.write("Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII));
        out.writeInt(8);
        out.writeShort(2);
        tag(out, 0x0112, 3, 1, orientation << 16);
        tag(out, 0x8825, 4, 1, 38);
        out.writeInt(0);
        out.writeShort(2);
        tag(out, 1, 2, 2, 'N' << 24);
        tag(out, 2, 5, 3, 68);
        out.writeInt(0);
        for (int part : new int[] {12, 1, 0, 1, 0, 1}) {
            out.writeInt(part);
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        DataOutputStream file = new DataOutputStream(all);
        file.write(jpeg, 0, 2);
        file.writeShort(0xFFE1);
        file.writeShort(block.size() + 2);
        block.writeTo(file);
        file.write(jpeg, 2, jpeg.length - 2);
        return all.toByteArray();
    }

    private static void tag(DataOutputStream out, int tag, int type, int count, int value) throws IOException {
        out.writeShort(tag);
        out.writeShort(type);
        out.writeInt(count);
        out.writeInt(value);
    }

    private Path kept(byte[] bytes, Copy copy) {
        Photos photos = new Photos(folder);
        Kept kept = photos.keep(bytes);
        assertThat(kept).isInstanceOf(Kept.Photo.class);
        return photos.file(((Kept.Photo) kept).hash(), copy).orElseThrow();
    }

    private String refused(byte[] bytes) {
        Kept kept = new Photos(folder).keep(bytes);
        assertThat(kept).isInstanceOf(Kept.Refused.class);
        assertThat(folder).isEmptyDirectory();
        return ((Kept.Refused) kept).sentence();
    }

    private static char colourAt(BufferedImage image, double x, double y) {
        Color colour = new Color(image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight())));
        boolean red = colour.getRed() > 128;
        boolean green = colour.getGreen() > 128;
        return red && green ? 'w' : red ? 'r' : green ? 'g' : 'b';
    }

    private static String colours(BufferedImage image) {
        return "" + colourAt(image, 0.25, 0.25) + colourAt(image, 0.75, 0.25) + colourAt(image, 0.25, 0.75)
                + colourAt(image, 0.75, 0.75);
    }

    /** The quarters as they must stand by the Exif tag's own words: where its first row and first column are to be shown. */
    @ParameterizedTest
    @CsvSource({"1,rgbw", "2,grwb", "3,wbgr", "4,bwrg", "5,rbgw", "6,brwg", "7,wgbr", "8,gwrb"})
    void aPhotoIsKeptTheRightWayUpAndWithoutItsPlace(int orientation, String upright) throws Exception {
        byte[] photo = withExif(encoded(quarters(), "jpeg"), orientation);
        var given = ImageMetadataReader.readMetadata(new ByteArrayInputStream(photo));
        assertThat(given.getFirstDirectoryOfType(GpsDirectory.class).getRationalArray(GpsDirectory.TAG_LATITUDE))
                .startsWith(new Rational(12, 1));

        Path file = kept(photo, Copy.FULL);

        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isEqualTo(orientation < 5 ? WIDE : HIGH);
        assertThat(colours(image)).isEqualTo(upright);
        assertThat(ImageMetadataReader.readMetadata(file.toFile()).getDirectories())
                .noneMatch(ExifDirectoryBase.class::isInstance);
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .doesNotContain("Exif");
    }

    @Test
    void aBigPhotoIsMadeSmallerAndHasACopyForLists() throws IOException {
        byte[] photo = encoded(new BufferedImage(5000, 2500, BufferedImage.TYPE_INT_RGB), "png");
        BufferedImage full = ImageIO.read(kept(photo, Copy.FULL).toFile());
        BufferedImage small = ImageIO.read(kept(photo, Copy.SMALL).toFile());
        assertThat(full.getWidth()).isEqualTo(3200);
        assertThat(full.getHeight()).isEqualTo(1600);
        assertThat(small.getWidth()).isEqualTo(480);
        assertThat(small.getHeight()).isEqualTo(240);
    }

    @Test
    void theSamePhotoIsKeptOnce() throws IOException {
        byte[] photo = encoded(quarters(), "png");
        assertThat(kept(photo, Copy.FULL)).isEqualTo(kept(photo, Copy.FULL));
        try (var files = Files.walk(folder)) {
            assertThat(files.filter(Files::isRegularFile)).hasSize(2);
        }
    }

    @Test
    void whatIsNoPhotoIsRefused() throws IOException {
        assertThat(refused(new byte[0])).contains("neither a JPEG nor a PNG");
        assertThat(refused("GIF89a, or so".getBytes(StandardCharsets.US_ASCII))).contains("neither a JPEG nor a PNG");
        assertThat(refused(encoded(quarters(), "bmp"))).contains("neither a JPEG nor a PNG");
        assertThat(refused(new byte[Photos.MOST_BYTES + 1])).contains("more than 25 MB");
        byte[] jpeg = encoded(quarters(), "jpeg");
        assertThat(refused(Arrays.copyOf(jpeg, jpeg.length * 2 / 3))).contains("damaged");
        assertThat(refused(Arrays.copyOf(jpeg, 20))).contains("damaged");
        byte[] png = encoded(quarters(), "png");
        assertThat(refused(Arrays.copyOf(png, png.length * 2 / 3))).contains("damaged");
    }

    /** A head that claims a picture that would fill the memory; nothing of it is decoded. */
    @Test
    void aHugePictureIsRefusedByItsHead() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write(encoded(quarters(), "png"), 0, 8);
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        DataOutputStream chunk = new DataOutputStream(head);
        chunk.write("IHDR".getBytes(StandardCharsets.US_ASCII));
        chunk.writeInt(100_000);
        chunk.writeInt(100_000);
        chunk.write(new byte[] {8, 2, 0, 0, 0});
        CRC32 crc = new CRC32();
        crc.update(head.toByteArray());
        out.writeInt(13);
        head.writeTo(out);
        out.writeInt((int) crc.getValue());
        out.writeInt(0);
        out.write("IDAT".getBytes(StandardCharsets.US_ASCII));
        assertThat(refused(bytes.toByteArray())).contains("100000 by 100000 points, more than 40 million");
    }

    @Test
    void onlyAHashNamesAPhoto() throws IOException {
        Path file = kept(encoded(quarters(), "png"), Copy.FULL);
        byte[] bytes = Files.readAllBytes(file);
        String hash = file.getFileName().toString().replace(".jpg", "");
        Photos photos = new Photos(folder);
        assertThat(photos.file("../" + hash, Copy.FULL)).isEmpty();
        assertThat(photos.file("0".repeat(64), Copy.FULL)).isEmpty();
        assertThat(photos.keepExactly(hash, bytes)).isEqualTo(new Kept.Photo(hash));
        bytes[bytes.length / 2] ^= 1;
        assertThat(photos.keepExactly(hash, bytes)).isInstanceOf(Kept.Refused.class);
        assertThat(Photos.against(hash, bytes)).isPresent();
    }
}
