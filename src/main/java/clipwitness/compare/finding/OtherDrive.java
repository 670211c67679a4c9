package clipwitness.compare.finding;

import java.util.List;

/**
 * A state was driven harder or softer than the one it is compared with: what changed there may be the drive, not the unit.
 *
 * @param subject states and condition
 * @param input   input of the later state less that of the earlier one, dB
 */
public record OtherDrive(Subject subject, FindingValue input) implements Finding {
    @Override
    public String code() {
        return "other-drive";
    }

    /** Whether the later state was driven harder. */
    public boolean isStronger() {
        return input.value() > 0;
    }

    @Override
    public String word() {
        return isStronger() ? "stronger" : "weaker";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(input);
    }
}
