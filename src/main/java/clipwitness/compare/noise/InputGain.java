package clipwitness.compare.noise;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.List;
import java.util.Optional;

/** The gain for small signals of a state where its noise was captured, from its waves at the same positions of the controls. */
public final class InputGain {
    private final Catalogue waves;
    private final Repeatability repeatability;

    /** From the waves of a job. */
    public InputGain(Catalogue waves, Repeatability repeatability) {
        this.waves = waves;
        this.repeatability = repeatability;
    }

    /** The waves that it is from. */
    Optional<StateAtCondition> wave(String state, Condition noise) {
        return waves.of(state).stream()
                .filter(s -> s.condition().gainPercent().equals(noise.gainPercent())
                        && s.condition().setting().equals(noise.setting())
                        && s.figure(WaveformQuantity.SMALL_SIGNAL_GAIN).value().isPresent())
                .findFirst();
    }

    /** The gain, dB, with how well the gain control is set again. */
    Optional<Measured.Value> of(String state, Condition noise) {
        return wave(state, noise)
                .flatMap(s -> repeatability
                        .figure(s, WaveformQuantity.SMALL_SIGNAL_GAIN)
                        .asValue());
    }

    /** What setting the gain control again does to the noise, dB. */
    List<Contribution> control(NoiseAtCondition setting) {
        return control(setting.state(), setting.condition());
    }

    /** What setting the gain control again does to the gain for small signals, dB; nothing where no wave shows it. */
    public List<Contribution> control(String state, Condition condition) {
        return wave(state, condition)
                .map(s -> repeatability.of(s, WaveformQuantity.SMALL_SIGNAL_GAIN))
                .orElse(List.of());
    }
}
