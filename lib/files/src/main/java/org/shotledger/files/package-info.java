/**
 * Files that are replaced whole: a reader sees the old content or the new, never a part.
 *
 * <p>Allowed imports: the JDK.
 */
package org.shotledger.files;
