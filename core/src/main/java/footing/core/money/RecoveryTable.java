package footing.core.money;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * Percentage table of US tax depreciation (general system, 200 % declining balance to straight line).
 *
 * <p>The printed percentages are kept as data: they differ from the formula by up to 0.01 point through alternating
 * roundings. They apply to the unadjusted basis, after what was expensed or specially allowed, and not in short tax
 * years. Source: IRS Publication 946, Appendix A, Tables A-1 to A-5 (resource {@code recovery-percentages.tsv}).
 *
 * @param recoveryYears class of the property, 5 or 7 years
 * @param convention when it counts as placed in service
 * @param shares of the basis by tax year, recoveryYears + 1 of them, adding up to 1
 */
public record RecoveryTable(int recoveryYears, Convention convention, List<Double> shares) {

    private static final String RESOURCE = "recovery-percentages.tsv";

    public RecoveryTable {
        shares = List.copyOf(shares);
        double sum = shares.stream()
                .mapToDouble(share -> Inputs.share("share", share))
                .sum();
        if (shares.size() != recoveryYears + 1 || !(Math.abs(sum - 1) < 1e-9)) {
            throw new IllegalArgumentException("shares are " + shares + ", must be " + (recoveryYears + 1)
                    + " that add up to 1\nCheck the table against the publication.");
        }
    }

    /**
     * The published table.
     *
     * @param recoveryYears 5 or 7
     * @param convention when the property counts as placed in service
     * @return the table
     */
    public static RecoveryTable of(int recoveryYears, Convention convention) {
        String key = convention + "\t" + recoveryYears + "\t";
        return read().lines()
                .filter(line -> line.startsWith(key))
                .map(line -> new RecoveryTable(recoveryYears, convention, shares(line.substring(key.length()))))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("recovery years are " + recoveryYears
                        + ", must be 5 or 7\nAsk a tax adviser for the class of the property."));
    }

    /**
     * Deduction of a full year.
     *
     * @param basis unadjusted basis, at least 0
     * @param year tax year, 1 to recoveryYears + 1
     * @return share of the basis
     */
    public double deduction(double basis, int year) {
        return Inputs.notNegative("basis", basis) * shares.get(Inputs.between("year", year, 1, shares.size()) - 1);
    }

    /**
     * Deduction in the year the property is sold: part of the year's, and nothing if it is sold in the year it was
     * bought.
     *
     * @param basis unadjusted basis, at least 0
     * @param year tax year of the sale, 1 to recoveryYears + 1
     * @param quarter of the sale, 1 to 4
     * @return the deduction
     */
    public double deductionOnDisposal(double basis, int year, int quarter) {
        double full = deduction(basis, year);
        if (year == 1) {
            return 0;
        }
        double sold = convention.disposalFraction(quarter);
        // The last year's percentage covers only the part of the year that the placing left over.
        double covered = year == shares.size() ? 1 - convention.placedFraction() : 1;
        return full * Math.min(1, sold / covered);
    }

    private static List<Double> shares(String columns) {
        return Arrays.stream(columns.split("\t"))
                .map(percent -> Double.parseDouble(percent) / 100)
                .toList();
    }

    private static String read() {
        try (InputStream in = RecoveryTable.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException(RESOURCE + " is missing from the program\nInstall it again.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
