package rickyard.morning;

import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.batch.infrastructure.item.support.AbstractItemCountingItemStreamItemReader;

/** Reads a frozen, ordered list; after a restart it goes on behind the last committed item. */
final class ListReader<T> extends AbstractItemCountingItemStreamItemReader<T> {
  private final Supplier<List<T>> source;
  private List<T> items = List.of();
  private int next;

  ListReader(String name, Supplier<List<T>> source) {
    this.source = source;
    setName(name);
  }

  @Override
  protected void doOpen() {
    items = source.get();
    next = 0;
  }

  @Override
  protected void jumpToItem(int index) {
    next = index;
  }

  @Override
  protected @Nullable T doRead() {
    return next < items.size() ? items.get(next++) : null;
  }

  @Override
  protected void doClose() {
    items = List.of();
  }
}
