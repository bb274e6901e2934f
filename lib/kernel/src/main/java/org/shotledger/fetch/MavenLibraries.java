package org.shotledger.fetch;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.aether.AbstractRepositoryListener;
import org.eclipse.aether.ConfigurationProperties;
import org.eclipse.aether.RepositoryEvent;
import org.eclipse.aether.RepositorySystem;
import org.eclipse.aether.RepositorySystemSession.CloseableSession;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.collection.CollectRequest;
import org.eclipse.aether.graph.Dependency;
import org.eclipse.aether.resolution.ArtifactResult;
import org.eclipse.aether.resolution.DependencyRequest;
import org.eclipse.aether.resolution.DependencyResolutionException;
import org.eclipse.aether.supplier.RepositorySystemSupplier;
import org.eclipse.aether.supplier.SessionBuilderSupplier;
import org.eclipse.aether.util.filter.DependencyFilterUtils;

/** Libraries from the user's local repository, and what is missing there from the repositories that the settings of Maven name. */
public final class MavenLibraries {

    private static final int CONNECT_MILLIS = 10_000;
    private static final int ANSWER_MILLIS = 60_000;

    private final MavenSettings settings;

    private MavenLibraries(MavenSettings settings) {
        this.settings = settings;
    }

    /**
     * As the user's own Maven finds them: {@code .m2/settings.xml} in the user's folder, and that of the installation in {@code MAVEN_HOME}.
     *
     * @return the libraries
     * @throws FetchException if the settings cannot be read
     */
    public static MavenLibraries ofUser() throws FetchException {
        String maven = System.getenv("MAVEN_HOME");
        return of(
                Path.of(System.getProperty("user.home"), ".m2"),
                maven == null ? null : Path.of(maven, "conf", "settings.xml"));
    }

    /**
     * As a folder of settings says.
     *
     * @param folder what {@code .m2} in the user's folder is to Maven; it may be missing
     * @param global settings for everybody; null for none
     * @return the libraries
     * @throws FetchException if the settings cannot be read
     */
    public static MavenLibraries of(Path folder, Path global) throws FetchException {
        return new MavenLibraries(MavenSettings.read(folder, global));
    }

    /**
     * Sees to it that a library is in the local repository, with everything it needs to run.
     *
     * @param coordinates {@code group:artifact:version}, or {@code group:artifact:extension:classifier:version}
     * @return the jars
     * @throws FetchException if the coordinates are none, or no repository has the library
     */
    public Fetched fetch(String coordinates) throws FetchException {
        Artifact wanted = artifact(coordinates);
        Map<String, String> origins = new ConcurrentHashMap<>();
        try (RepositorySystem system = new RepositorySystemSupplier().get();
                CloseableSession session = settings.configure(new SessionBuilderSupplier(system).get())
                        .setConfigProperty(ConfigurationProperties.CONNECT_TIMEOUT, CONNECT_MILLIS)
                        .setConfigProperty(ConfigurationProperties.REQUEST_TIMEOUT, ANSWER_MILLIS)
                        .withRepositoryListener(new Downloads(origins))
                        .build()) {
            CollectRequest tree = new CollectRequest(
                    new Dependency(wanted, "runtime"),
                    system.newResolutionRepositories(session, settings.repositories()));
            List<ArtifactResult> found = system.resolveDependencies(
                            session, new DependencyRequest(tree, DependencyFilterUtils.classpathFilter("runtime")))
                    .getArtifactResults();
            Map<Path, Fetched.Jar> jars = new LinkedHashMap<>();
            for (ArtifactResult one : found) {
                String name = name(one.getArtifact());
                Path file = one.getArtifact().getPath();
                jars.put(file, new Fetched.Jar(name, file, origins.getOrDefault(name, "")));
            }
            return new Fetched(coordinates, List.copyOf(jars.values()));
        } catch (DependencyResolutionException e) {
            throw new FetchException(
                    coordinates + " cannot be had: " + reason(e) + " Check the coordinates, the network, and the"
                            + " repositories in " + settings.file() + ".",
                    e);
        }
    }

    private static Artifact artifact(String coordinates) throws FetchException {
        try {
            return new DefaultArtifact(coordinates.strip());
        } catch (IllegalArgumentException e) {
            throw new FetchException(
                    "\"" + coordinates + "\" is no library: write group:artifact:version, such as"
                            + " org.apache.commons:commons-csv:1.14.1.",
                    e);
        }
    }

    /** The first reason: the ones around it repeat it. */
    private static String reason(Throwable thrown) {
        Throwable first = thrown;
        while (first.getCause() != null) {
            first = first.getCause();
        }
        String message = String.valueOf(first.getMessage()).strip();
        return message.endsWith(".") ? message : message + ".";
    }

    private static String name(Artifact artifact) {
        return artifact.getGroupId() + ":" + artifact.getArtifactId() + ":" + artifact.getVersion();
    }

    /** Notes where jars came from. */
    private static final class Downloads extends AbstractRepositoryListener {
        private final Map<String, String> origins;

        Downloads(Map<String, String> origins) {
            this.origins = origins;
        }

        @Override
        public void artifactDownloaded(RepositoryEvent event) {
            Artifact artifact = event.getArtifact();
            if (event.getException() == null && !"pom".equals(artifact.getExtension())) {
                origins.put(name(artifact), event.getRepository().getId());
            }
        }
    }
}
