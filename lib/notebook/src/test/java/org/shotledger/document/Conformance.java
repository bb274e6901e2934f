package org.shotledger.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Asks a validator that is not ours whether a PDF keeps a standard. */
public final class Conformance {
    /** Fewer checks than this mean that hardly anything was looked at. */
    private static final int FEWEST_CHECKS = 1000;

    private Conformance() {}

    /**
     * What a file breaks of ISO 19005-2 (PDF/A-2), level A, and of ISO 14289-1 (PDF/UA-1).
     *
     * @param pdf the file
     * @return clause, test and count of each rule broken
     * @throws IOException when the validator cannot be closed
     * @throws VeraPDFException when the file cannot be read
     */
    public static List<String> broken(byte[] pdf) throws IOException, VeraPDFException {
        List<String> broken = new java.util.ArrayList<>();
        broken.addAll(broken(pdf, PDFAFlavour.PDFA_2_A));
        broken.addAll(broken(pdf, PDFAFlavour.PDFUA_1));
        return broken;
    }

    private static List<String> broken(byte[] pdf, PDFAFlavour standard) throws IOException, VeraPDFException {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
            ValidationResult result = validator.validate(parser);
            if (result.getTotalAssertions() < FEWEST_CHECKS) {
                return List.of(standard + ": only " + result.getTotalAssertions() + " checks were made");
            }
            return result.getFailedChecks().entrySet().stream()
                    .map(rule -> standard + " " + rule.getKey().getClause() + "-"
                            + rule.getKey().getTestNumber() + ", " + rule.getValue() + " times")
                    .toList();
        }
    }
}
