package plumeline.cli;

import java.io.IOException;
import java.util.List;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.Usage;
import plumeline.plan.Plans;
import plumeline.text.JsonSchema;

/// `schema`: prints the grammar of a plan as a JSON Schema, for editors that check while one types.
final class SchemaCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "schema", "Prints what a plan may hold as a JSON Schema (2020-12), for editors.", "", 0, 0, List.of());
    }

    @Override
    public Outcome run(Arguments given, Console console) throws IOException {
        console.answer(JsonSchema.write(Plans.grammar()));
        return Outcome.ANSWERED;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(List.of(), ""));
    }
}
