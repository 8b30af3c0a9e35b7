package rickyard.intake.grid.ocr;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.charset.StandardCharsets;

/** One page as a grey picture in the plainest of formats: a line of numbers, then the dots. */
final class Picture {
  /** Dots of one page at most; a sheet of A4 at 300 dots an inch has 8.7 million. */
  static final int MOST_DOTS = 16_000_000;

  private final byte[] bytes;
  private final int dpi;

  private Picture(byte[] bytes, int dpi) {
    this.bytes = bytes;
    this.dpi = dpi;
  }

  /**
   * Makes a picture grey, on white paper.
   *
   * @param dpi dots an inch, as far as it is known
   */
  static Picture of(BufferedImage image, int dpi) {
    BufferedImage grey =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D paper = grey.createGraphics();
    paper.setColor(Color.WHITE);
    paper.fillRect(0, 0, grey.getWidth(), grey.getHeight());
    paper.drawImage(image, 0, 0, null);
    paper.dispose();
    byte[] dots = ((DataBufferByte) grey.getRaster().getDataBuffer()).getData();
    byte[] head =
        "P5 %d %d 255\n"
            .formatted(grey.getWidth(), grey.getHeight())
            .getBytes(StandardCharsets.US_ASCII);
    byte[] bytes = new byte[head.length + dots.length];
    System.arraycopy(head, 0, bytes, 0, head.length);
    System.arraycopy(dots, 0, bytes, head.length, dots.length);
    return new Picture(bytes, dpi);
  }

  @SuppressWarnings("MixedMutabilityReturnType")
  byte[] bytes() {
    return bytes.clone();
  }

  int dpi() {
    return dpi;
  }
}
