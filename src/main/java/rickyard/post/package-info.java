/**
 * Sending: what a morning drafted goes to a mail server, each message at most once by itself.
 *
 * <p>The way in is {@link rickyard.post.PostRound}. Nothing here writes a message: what goes out is
 * the very draft that lies in the morning's folder, with a sender and a date.
 */
@NullMarked
package rickyard.post;

import org.jspecify.annotations.NullMarked;
