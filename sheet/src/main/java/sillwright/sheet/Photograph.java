package sillwright.sheet;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;

import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.filters.Flip;
import net.coobird.thumbnailator.filters.Rotation;

import sillwright.measure.Refused;

/// A picture made ready for paper: turned as its camera says, small, and without a word of where and when it was taken.
public final class Photograph {
    /// As many points as 88 mm of paper show at 200 to the inch. Own choice.
    private static final int LARGEST = 700;

    private Photograph() {}

    /// @return a JPEG with no metadata
    /// @throws Refused where it cannot be read as a picture
    public static byte[] small(byte[] picture, String name) {
        try {
            BufferedImage read = read(picture).orElseThrow(() -> new Refused(name, "is no JPEG or PNG picture that can be drawn", "save it as JPEG"));
            BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
            var paper = plain.createGraphics();
            paper.drawImage(read, 0, 0, java.awt.Color.WHITE, null);
            paper.dispose();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            double scale = Math.min(1, (double) LARGEST / Math.max(plain.getWidth(), plain.getHeight()));
            Thumbnails.of(turned(plain, orientation(picture))).scale(scale).outputFormat("jpg").outputQuality(0.8).toOutputStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new Refused(name, "cannot be read: {}", "send the picture again", String.valueOf(e.getMessage()));
        }
    }

    /// No more of its points than twice what is shown: a camera's picture unpacked whole would take a hundred times the memory of what is printed.
    private static Optional<BufferedImage> read(byte[] picture) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(picture))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) return Optional.empty();
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                int every = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / (2 * LARGEST));
                ImageReadParam some = reader.getDefaultReadParam();
                some.setSourceSubsampling(every, every, 0, 0);
                return Optional.of(reader.read(0, some));
            } finally {
                reader.dispose();
            }
        }
    }

    /// How the camera was held: 1 upright to 8. Source: Exif 2.3, tag 0x0112.
    private static int orientation(byte[] picture) throws IOException {
        try {
            ExifIFD0Directory exif = ImageMetadataReader.readMetadata(new ByteArrayInputStream(picture)).getFirstDirectoryOfType(ExifIFD0Directory.class);
            return exif != null && exif.containsTag(ExifIFD0Directory.TAG_ORIENTATION) ? exif.getInt(ExifIFD0Directory.TAG_ORIENTATION) : 1;
        } catch (ImageProcessingException | MetadataException unsaid) {
            return 1;       // a picture whose notes cannot be read is shown as it lies
        }
    }

    private static BufferedImage turned(BufferedImage image, int orientation) {
        BufferedImage flipped = switch (orientation) {
            case 2, 5, 7 -> Flip.HORIZONTAL.apply(image);
            case 4 -> Flip.VERTICAL.apply(image);
            default -> image;
        };
        return switch (orientation) {
            case 3 -> Rotation.ROTATE_180_DEGREES.apply(flipped);
            case 5, 8 -> Rotation.LEFT_90_DEGREES.apply(flipped);
            case 6, 7 -> Rotation.RIGHT_90_DEGREES.apply(flipped);
            default -> flipped;
        };
    }
}
