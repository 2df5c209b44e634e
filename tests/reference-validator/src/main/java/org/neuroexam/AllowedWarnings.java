package org.neuroexam;

import com.google.gson.Gson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** The warnings that this project differs from on purpose, each with its reason. Errors are never allowed. */
final class AllowedWarnings {
  /** One entry of the file; `message` and `path` are regular expressions that may match a part. */
  private record Written(String type, String path, String message, String reason) {}

  private record Entry(Written written, Pattern path, Pattern message) {}

  private final List<Entry> entries;
  private final Set<Entry> used = ConcurrentHashMap.newKeySet();

  private AllowedWarnings(List<Entry> entries) {
    this.entries = entries;
  }

  static AllowedWarnings read(Path file) throws IOException {
    Written[] written = new Gson().fromJson(Files.readString(file), Written[].class);
    return new AllowedWarnings(Arrays.stream(written).map(AllowedWarnings::compile).toList());
  }

  private static Entry compile(Written written) {
    if (written.message() == null || written.reason() == null || written.reason().isBlank())
      throw new IllegalArgumentException("an allowed warning needs a message and a reason: " + written);
    return new Entry(
        written, Pattern.compile(written.path() == null ? "" : written.path()), Pattern.compile(written.message()));
  }

  boolean allows(Finding finding) {
    boolean allowed = false;
    for (Entry entry : entries) {
      boolean matches =
          (entry.written().type() == null || entry.written().type().equals(finding.type()))
              && entry.path().matcher(finding.path()).find()
              && entry.message().matcher(finding.message()).find();
      if (!matches) continue;
      used.add(entry);
      allowed = true;
    }
    return allowed;
  }

  /** The messages of entries that allowed nothing. */
  List<String> unused() {
    return entries.stream().filter(entry -> !used.contains(entry)).map(entry -> entry.written().message()).toList();
  }
}
