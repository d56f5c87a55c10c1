package plumeline.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Question;
import plumeline.ask.colour.ColourQuestions;
import plumeline.ask.effect.EffectQuestions;
import plumeline.ask.light.LightQuestions;
import plumeline.ask.motion.MotionQuestions;
import plumeline.ask.picture.PictureQuestions;
import plumeline.ask.sound.SoundQuestions;
import plumeline.ask.time.TimeQuestions;
import plumeline.ask.water.WaterQuestions;

/// The questions that can be asked.
public final class Questions {
    private static final List<String> NAMES = List.of(
            "framing",
            "reveal",
            "float",
            "hang",
            "tank",
            "line",
            "sweat",
            "beads",
            "ink",
            "clear-water",
            "fall",
            "highlight",
            "exposure",
            "colour",
            "power",
            "gel",
            "lamp-flicker",
            "cut-flash",
            "move",
            "turntable",
            "label",
            "white-balance",
            "ramp",
            "beat",
            "media",
            "loudness");

    private Questions() {}

    /// Lists every question, in the order of the contract.
    ///
    /// @return the questions
    public static List<Question> listAll() {
        List<Question> all = new ArrayList<>();
        for (String name : NAMES) {
            all.add(find(name).orElseThrow());
        }
        return List.copyOf(all);
    }

    /// Finds a question by its name.
    ///
    /// @param name such as `framing`
    /// @return the question
    public static Optional<Question> find(String name) {
        return switch (name) {
            case "framing" -> Optional.of(PictureQuestions.framing());
            case "reveal" -> Optional.of(PictureQuestions.reveal());
            case "move" -> Optional.of(MotionQuestions.move());
            case "turntable" -> Optional.of(MotionQuestions.turntable());
            case "beads" -> Optional.of(WaterQuestions.beads());
            case "sweat" -> Optional.of(WaterQuestions.sweat());
            case "float" -> Optional.of(WaterQuestions.floats());
            case "hang" -> Optional.of(WaterQuestions.hang());
            case "tank" -> Optional.of(WaterQuestions.tank());
            case "line" -> Optional.of(WaterQuestions.line());
            case "ink" -> Optional.of(EffectQuestions.ink());
            case "clear-water" -> Optional.of(EffectQuestions.clearWater());
            case "fall" -> Optional.of(EffectQuestions.fall());
            case "highlight" -> Optional.of(LightQuestions.highlight());
            case "exposure" -> Optional.of(LightQuestions.exposure());
            case "power" -> Optional.of(LightQuestions.power());
            case "colour" -> Optional.of(ColourQuestions.colour());
            case "gel" -> Optional.of(ColourQuestions.gel());
            case "label" -> Optional.of(ColourQuestions.label());
            case "white-balance" -> Optional.of(ColourQuestions.whiteBalance());
            case "lamp-flicker" -> Optional.of(LightQuestions.lampFlicker());
            case "cut-flash" -> Optional.of(LightQuestions.cutFlash());
            case "ramp" -> Optional.of(TimeQuestions.ramp());
            case "beat" -> Optional.of(TimeQuestions.beat());
            case "media" -> Optional.of(TimeQuestions.media());
            case "loudness" -> Optional.of(SoundQuestions.loudness());
            default -> Optional.empty();
        };
    }
}
