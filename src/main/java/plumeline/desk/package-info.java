/// What every command uses: what is typed after its name, standard streams, how it ends, the files that a user names
/// and those that lie beside a plan (lessons, ink, lamps' files, prints), what is said meanwhile.
///
/// Front class: [plumeline.desk.Command]. With `cli` this is the only room that prints, opens files or reads the clock;
/// a file that is somebody's work is never half written ([plumeline.desk.PlainFile]). Not here: any command.
@NullMarked
package plumeline.desk;

import org.jspecify.annotations.NullMarked;
