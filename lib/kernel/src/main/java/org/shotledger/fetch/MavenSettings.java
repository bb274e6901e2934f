package org.shotledger.fetch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.model.Model;
import org.apache.maven.model.building.DefaultModelProcessor;
import org.apache.maven.model.io.DefaultModelReader;
import org.apache.maven.model.superpom.DefaultSuperPomProvider;
import org.apache.maven.settings.Proxy;
import org.apache.maven.settings.Server;
import org.apache.maven.settings.Settings;
import org.apache.maven.settings.building.DefaultSettingsBuilderFactory;
import org.apache.maven.settings.building.DefaultSettingsBuildingRequest;
import org.apache.maven.settings.building.SettingsBuildingException;
import org.apache.maven.settings.crypto.DefaultSettingsDecrypter;
import org.apache.maven.settings.crypto.DefaultSettingsDecryptionRequest;
import org.apache.maven.settings.crypto.SettingsDecryptionResult;
import org.eclipse.aether.RepositorySystemSession.SessionBuilder;
import org.eclipse.aether.repository.Authentication;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.util.repository.AuthenticationBuilder;
import org.eclipse.aether.util.repository.DefaultAuthenticationSelector;
import org.eclipse.aether.util.repository.DefaultMirrorSelector;
import org.eclipse.aether.util.repository.DefaultProxySelector;
import org.sonatype.plexus.components.cipher.DefaultPlexusCipher;
import org.sonatype.plexus.components.sec.dispatcher.DefaultSecDispatcher;

/** What the settings of Maven say of repositories. */
final class MavenSettings {

    private static final String MODEL = "4.0.0";

    private final Path folder;
    private final Settings settings;
    private final SettingsDecryptionResult secrets;

    private MavenSettings(Path folder, Settings settings, SettingsDecryptionResult secrets) {
        this.folder = folder;
        this.settings = settings;
        this.secrets = secrets;
    }

    /** The settings; those of everybody may be null, and missing files say nothing. */
    static MavenSettings read(Path folder, Path global) throws FetchException {
        DefaultSettingsBuildingRequest request = new DefaultSettingsBuildingRequest();
        request.setUserSettingsFile(folder.resolve("settings.xml").toFile());
        request.setGlobalSettingsFile(global == null ? null : global.toFile());
        request.setSystemProperties(System.getProperties());
        try {
            Settings settings = new DefaultSettingsBuilderFactory()
                    .newInstance()
                    .build(request)
                    .getEffectiveSettings();
            DefaultSecDispatcher secrets = new DefaultSecDispatcher(new DefaultPlexusCipher());
            secrets.setConfigurationFile(folder.resolve("settings-security.xml").toString());
            return new MavenSettings(
                    folder,
                    settings,
                    new DefaultSettingsDecrypter(secrets).decrypt(new DefaultSettingsDecryptionRequest(settings)));
        } catch (SettingsBuildingException e) {
            throw new FetchException(
                    "Maven's settings cannot be read: " + e.getMessage().strip() + ". Mend "
                            + folder.resolve("settings.xml") + ".",
                    e);
        }
    }

    /** The user's own file, which need not be there. */
    Path file() {
        return folder.resolve("settings.xml");
    }

    SessionBuilder configure(SessionBuilder session) {
        String local = settings.getLocalRepository();
        return session.withLocalRepositoryBaseDirectories(
                        local == null || local.isBlank() ? folder.resolve("repository") : Path.of(local))
                .setOffline(settings.isOffline())
                .setSystemProperties(System.getProperties())
                .setMirrorSelector(mirrors())
                .setProxySelector(proxies())
                .setAuthenticationSelector(servers());
    }

    /** Those of the active profiles, and the one that Maven itself knows. */
    List<RemoteRepository> repositories() {
        List<RemoteRepository> found = new ArrayList<>();
        settings.getProfiles().stream()
                .filter(profile -> settings.getActiveProfiles().contains(profile.getId())
                        || (profile.getActivation() != null
                                && profile.getActivation().isActiveByDefault()))
                .flatMap(profile -> profile.getRepositories().stream())
                .forEach(one -> found.add(remote(one.getId(), one.getLayout(), one.getUrl())));
        superPom().getRepositories().forEach(one -> found.add(remote(one.getId(), one.getLayout(), one.getUrl())));
        return found;
    }

    /** What every project of Maven inherits: where it looks unless the settings say otherwise. */
    private static Model superPom() {
        DefaultModelProcessor reader = new DefaultModelProcessor().setModelReader(new DefaultModelReader());
        return new DefaultSuperPomProvider().setModelProcessor(reader).getSuperModel(MODEL);
    }

    private static RemoteRepository remote(String name, String layout, String address) {
        return new RemoteRepository.Builder(name, layout, address).build();
    }

    private DefaultMirrorSelector mirrors() {
        DefaultMirrorSelector selector = new DefaultMirrorSelector();
        settings.getMirrors()
                .forEach(one -> selector.add(
                        one.getId(),
                        one.getUrl(),
                        one.getLayout(),
                        false,
                        one.isBlocked(),
                        one.getMirrorOf(),
                        one.getMirrorOfLayouts()));
        return selector;
    }

    private DefaultProxySelector proxies() {
        DefaultProxySelector selector = new DefaultProxySelector();
        for (Proxy one : secrets.getProxies()) {
            if (one.isActive()) {
                selector.add(
                        new org.eclipse.aether.repository.Proxy(
                                one.getProtocol(),
                                one.getHost(),
                                one.getPort(),
                                login(one.getUsername(), one.getPassword())),
                        one.getNonProxyHosts());
            }
        }
        return selector;
    }

    private DefaultAuthenticationSelector servers() {
        DefaultAuthenticationSelector selector = new DefaultAuthenticationSelector();
        for (Server one : secrets.getServers()) {
            Authentication login = new AuthenticationBuilder()
                    .addUsername(one.getUsername())
                    .addPassword(one.getPassword())
                    .addPrivateKey(one.getPrivateKey(), one.getPassphrase())
                    .build();
            selector.add(one.getId(), login);
        }
        return selector;
    }

    private static Authentication login(String name, String password) {
        return new AuthenticationBuilder()
                .addUsername(name)
                .addPassword(password)
                .build();
    }
}
