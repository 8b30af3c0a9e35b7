package rickyard.core.forage;

import static java.util.Objects.requireNonNull;

import java.io.Serializable;
import java.util.OptionalInt;

/**
 * What a sample stands for: a lot, or one batch of a bagged feed.
 *
 * @param id lot id or feed id
 * @param batch batch of a feed; empty for a lot
 * @param material the class that decides how certain the laboratory is
 * @param cores cores taken according to the register of lots, if it says
 */
public record Subject(String id, String batch, MaterialClass material, OptionalInt cores)
    implements Serializable {

  public Subject {
    requireNonNull(id, "id");
    requireNonNull(batch, "batch");
    requireNonNull(material, "material");
    requireNonNull(cores, "cores");
  }

  /** The subject of a lot's samples; a blank material is taken from {@code reportMaterial}. */
  public static Subject ofLot(Lot lot, String reportMaterial) {
    String material = lot.material().isBlank() ? reportMaterial : lot.material();
    return new Subject(lot.id(), "", MaterialClass.of(material, lot.legumePercent()), lot.cores());
  }

  /** The subject of a certificate of a batch. */
  public static Subject ofBatch(String feed, String batch) {
    return new Subject(feed, batch, MaterialClass.BAGGED, OptionalInt.empty());
  }
}
