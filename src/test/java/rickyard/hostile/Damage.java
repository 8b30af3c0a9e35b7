package rickyard.hostile;

import java.util.Arrays;
import java.util.Random;

/** What a bad line or a bad disk does to bytes. */
enum Damage {
  /** One to eight bytes become others, anywhere. */
  BYTES {
    @Override
    byte[] done(byte[] whole, Random random) {
      byte[] bytes = whole.clone();
      int count = 1 + random.nextInt(8);
      for (int change = 0; change < count; change++) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      return bytes;
    }
  },
  /** One to eight neighbours become others that can be typed: the worst for text. */
  TYPED {
    @Override
    byte[] done(byte[] whole, Random random) {
      byte[] bytes = whole.clone();
      int count = 1 + random.nextInt(8);
      int from = random.nextInt(bytes.length);
      for (int at = from; at < Math.min(bytes.length, from + count); at++) {
        bytes[at] = (byte) " ,.;:0123456789<%ADMEPnm\n\"".charAt(random.nextInt(26));
      }
      return bytes;
    }
  },
  /** A single bit turns over. */
  BIT {
    @Override
    byte[] done(byte[] whole, Random random) {
      byte[] bytes = whole.clone();
      int at = random.nextInt(bytes.length);
      bytes[at] = (byte) (bytes[at] ^ (1 << random.nextInt(8)));
      return bytes;
    }
  },
  /** The end is missing. */
  CUT {
    @Override
    byte[] done(byte[] whole, Random random) {
      return Arrays.copyOf(whole, random.nextInt(whole.length));
    }
  },
  /** A block stands twice. */
  DOUBLED {
    @Override
    byte[] done(byte[] whole, Random random) {
      int from = random.nextInt(whole.length);
      int size = 1 + random.nextInt(Math.min(600, whole.length - from));
      byte[] head = Arrays.copyOf(whole, from + size);
      return Zips.joined(head, Arrays.copyOfRange(whole, from, whole.length));
    }
  };

  abstract byte[] done(byte[] whole, Random random);
}
