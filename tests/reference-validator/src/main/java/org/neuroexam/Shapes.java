package org.neuroexam;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What resources look like apart from who and when: ids, times and references to persons are passed over. One of each is
 * enough for an engine that looks at form, codes and texts, and makes thousands of exams affordable.
 */
final class Shapes {
  private static final Pattern ID =
      Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");
  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT[\\d:.]+(?:Z|[+-]\\d\\d:\\d\\d)");
  private static final Pattern PERSON = Pattern.compile("\"(Patient|Encounter|Practitioner)/[^\"]+\"");

  private final Set<String> seen = new HashSet<>();

  /** Whether no resource of this shape came before; remembers it. For one thread. */
  boolean isNew(String resource) {
    String shape = TIME.matcher(ID.matcher(resource).replaceAll("id")).replaceAll("time");
    return seen.add(PERSON.matcher(shape).replaceAll("\"$1\""));
  }
}
