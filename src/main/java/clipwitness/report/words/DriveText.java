package clipwitness.report.words;

import clipwitness.compare.finding.OtherDrive;
import clipwitness.quantity.Unit;

/** That a state was driven harder or softer, in words. */
final class DriveText {
    private final JobWording wording;

    DriveText(JobWording wording) {
        this.wording = wording;
    }

    String of(OtherDrive drive) {
        return wording.say(
                drive.isStronger() ? "drive.stronger" : "drive.weaker",
                "change",
                wording.numbers().fixed(Math.abs(drive.input().value()), Unit.DECIBEL, 1),
                "condition",
                wording.apart(wording.condition(drive.subject().condition())));
    }
}
