package plumeline.ask;

/// One named value of an answer.
///
/// @param name the answer's name, as in the contract: `distance`
/// @param value its value
public record Item(String name, Value value) {
    static Item millimetres(String name, double metres) {
        return of(name, metres * 1e3, "mm");
    }

    static Item of(String name, double value, String unit) {
        return new Item(name, new Value.Number(value, unit));
    }

    static Item word(String name, String text) {
        return new Item(name, new Value.Word(text));
    }
}
