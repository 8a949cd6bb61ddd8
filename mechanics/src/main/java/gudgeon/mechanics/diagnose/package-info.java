/** Which of several causes explains what was seen: chances by Bayes' rule, and what a test is expected to tell. */
@NullMarked
package gudgeon.mechanics.diagnose;

import org.jspecify.annotations.NullMarked;
