/**
 * One job: speak the Jupyter messaging protocol 5.3 for a Java session.
 *
 * <p>Written directly on JeroMQ and Gson. The published kernel bases keep the shell loop, the signature check and the handling
 * of {@code silent}, {@code stop_on_error} and interrupts in classes that cannot be replaced, so that little of them could be
 * used.
 *
 * <p>Allowed imports: the JDK, {@code comm}, {@code controls}, {@code display}, {@code snippet}, {@code ipynb}, {@code com.google.gson}, {@code org.zeromq}.
 */
package org.shotledger.kernel;
