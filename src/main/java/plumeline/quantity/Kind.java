package plumeline.quantity;

/// What a quantity measures. Units of one kind can stand for each other; units of different kinds never can.
public enum Kind {
    /// A length; SI metre.
    LENGTH("a length", "66 mm"),
    /// A plane angle; SI radian.
    ANGLE("an angle", "30 deg"),
    /// A time; SI second.
    TIME("a time", "1.5 s"),
    /// A frame rate; SI frames a second.
    RATE("a frame rate", "24 fps"),
    /// A speed; SI metre a second.
    SPEED("a speed", "80 mm/s"),
    /// An acceleration; SI metre a second squared.
    ACCELERATION("an acceleration", "200 mm/s2"),
    /// A jerk; SI metre a second cubed.
    JERK("a jerk", "900 mm/s3"),
    /// A turning speed; SI radian a second.
    TURN_RATE("a turning speed", "20 deg/s"),
    /// A turning acceleration; SI radian a second squared.
    TURN_ACCELERATION("a turning acceleration", "40 deg/s2"),
    /// A turning jerk; SI radian a second cubed.
    TURN_JERK("a turning jerk", "90 deg/s3"),
    /// A mass; SI kilogram.
    MASS("a mass", "197 g"),
    /// A volume; SI cubic metre.
    VOLUME("a volume", "80 ml"),
    /// A density; SI kilogram a cubic metre.
    DENSITY("a density", "0.92 g/ml"),
    /// A flow; SI cubic metre a second.
    FLOW("a flow", "10 l/min"),
    /// A force; SI newton.
    FORCE("a force", "2 N"),
    /// A pressure; SI pascal.
    PRESSURE("a pressure", "3 kPa"),
    /// A temperature of a thing; SI kelvin.
    TEMPERATURE("a temperature", "20 degC"),
    /// A colour temperature; SI kelvin.
    COLOUR_TEMPERATURE("a colour temperature", "5600 K"),
    /// An illuminance; SI lux. The one kind that takes `at D`.
    ILLUMINANCE("an illuminance", "4000 lx"),
    /// A luminous intensity; SI candela.
    INTENSITY("a luminous intensity", "900 cd"),
    /// A luminous flux; SI lumen.
    FLUX("a luminous flux", "1200 lm"),
    /// A share of something; SI fraction of one, so that 30 % is 0.3.
    SHARE("a share", "30 %"),
    /// Stops of exposure, that is factors of two.
    STOPS("stops", "1.5 stops"),
    /// Picture elements.
    PIXELS("a count of pixels", "2 px"),
    /// Frames of screen time.
    FRAMES("a count of frames", "12 frames"),
    /// A musical tempo; SI beats a second.
    TEMPO("a tempo", "120 bpm"),
    /// A programme loudness, in LUFS.
    LOUDNESS("a loudness", "-14 LUFS"),
    /// A true peak, in dBTP.
    TRUE_PEAK("a true peak", "-1 dBTP"),
    /// A difference of loudness, in LU.
    LOUDNESS_RANGE("a loudness difference", "6 LU"),
    /// A gain, in dB.
    GAIN("a gain", "-3 dB"),
    /// A frequency; SI hertz.
    FREQUENCY("a frequency", "100 Hz"),
    /// An electrical power; SI watt.
    POWER("a power", "300 W"),
    /// A voltage; SI volt.
    VOLTAGE("a voltage", "230 V"),
    /// A current; SI ampere.
    CURRENT("a current", "16 A"),
    /// A bit rate; SI bit a second.
    BIT_RATE("a bit rate", "400 Mb/s"),
    /// An amount of data; SI byte.
    DATA("an amount of data", "256 GB"),
    /// A decadic absorbance a length; SI one a metre.
    ABSORBANCE("an absorbance a length", "0.8 /cm"),
    /// A bare number without a unit: an f-number, a sensitivity, a count.
    NUMBER("a bare number", "8");

    private final String phrase;
    private final String example;

    Kind(String phrase, String example) {
        this.phrase = phrase;
        this.example = example;
    }

    /// Gives the kind with its article, as messages say it: `a length`.
    ///
    /// @return the phrase
    public String phrase() {
        return phrase;
    }

    /// Gives one well-written quantity of this kind: `66 mm`.
    ///
    /// @return the example
    public String example() {
        return example;
    }

    /// Gives the whole phrase a message needs: `a length in mm, cm, m, in or ft`.
    ///
    /// @return the phrase with the accepted units
    public String allowed() {
        return this == NUMBER ? "a bare number" : phrase + " in " + Unit.listed(this);
    }

    /// Tells whether a spread in per cent of the value makes sense: not where zero is a convention, as with degC or
    /// LUFS.
    boolean takesShareOfValue() {
        return switch (this) {
            case TEMPERATURE, LOUDNESS, TRUE_PEAK, GAIN, LOUDNESS_RANGE -> false;
            default -> true;
        };
    }

    /// Gives the kind whose units a spread of this kind may be written in, beside its own: LU for LUFS, dB for dBTP.
    Kind spreadKind() {
        return switch (this) {
            case LOUDNESS -> LOUDNESS_RANGE;
            case TRUE_PEAK -> GAIN;
            default -> this;
        };
    }
}
