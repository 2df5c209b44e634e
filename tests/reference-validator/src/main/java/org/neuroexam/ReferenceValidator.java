package org.neuroexam;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.validation.FhirValidator;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.ThreadPoolExecutor.CallerRunsPolicy;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.r5.utils.validation.constants.BestPracticeWarningLevel;

/**
 * Runs HL7's reference validation engine, without a network, over the conformance resources of this project and over files.
 * Arguments: the folder of the project, the file of allowed warnings, then the files: NDJSON with a resource on each line,
 * or JSON with one. Of a file whose name ends in .shapes.ndjson one resource of each shape is looked at. Exit codes: 0 when there is no error and no warning that is not allowed, otherwise 1.
 */
public final class ReferenceValidator {
  /** Extensions of HL7's guide to quality measures, which is not on Maven Central; R4 has none for what they say. */
  private static final String MEASURE_EXTENSIONS = "http://hl7.org/fhir/us/cqfmeasures/StructureDefinition/";

  private final FhirValidator validator;
  private final Findings findings = new Findings();
  private final Shapes shapes = new Shapes();
  private final AtomicLong resources = new AtomicLong();
  private long likeOthers = 0;
  private final AtomicReference<Throwable> failure = new AtomicReference<>();

  private ReferenceValidator(Path project) throws IOException {
    FhirContext context = FhirContext.forR4Cached();
    FhirInstanceValidator engine = new FhirInstanceValidator(OwnDefinitions.supportFor(context, project));
    engine.setBestPracticeWarningLevel(BestPracticeWarningLevel.Warning);
    engine.setAnyExtensionsAllowed(false);
    engine.setCustomExtensionDomains(MEASURE_EXTENSIONS);
    engine.setErrorForUnknownProfiles(true);
    validator = context.newValidator().registerValidatorModule(engine);
  }

  public static void main(String[] arguments) throws Exception {
    Path project = Path.of(arguments[0]);
    AllowedWarnings allowed = AllowedWarnings.read(Path.of(arguments[1]));
    List<Path> files = new ArrayList<>(OwnDefinitions.resourceFiles(project));
    Arrays.stream(arguments).skip(2).map(Path::of).forEach(files::add);
    ReferenceValidator reference = new ReferenceValidator(project);
    reference.validate(files);
    boolean isFine = reference.findings.report(reference.resources.get(), reference.likeOthers, allowed, System.out);
    System.exit(isFine ? 0 : 1);
  }

  /** On all cores. Who reads validates a line itself when all are busy, so that few lines wait in memory. */
  private void validate(List<Path> files) throws IOException, InterruptedException {
    int others = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    ThreadPoolExecutor pool =
        new ThreadPoolExecutor(
            others, others, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(2 * others), new CallerRunsPolicy());
    for (Path file : files) {
      if (!file.toString().endsWith(".ndjson")) {
        String text = Files.readString(file);
        pool.execute(() -> validateOne(text, file.toString()));
        continue;
      }
      try (BufferedReader lines = Files.newBufferedReader(file)) {
        int number = 1;
        boolean eachShape = file.toString().endsWith(".shapes.ndjson");
        for (String line = lines.readLine(); line != null; line = lines.readLine(), number++) {
          if (eachShape && !shapes.isNew(line)) {
            likeOthers++;
            continue;
          }
          String text = line;
          String place = file + ":" + number;
          pool.execute(() -> validateOne(text, place));
        }
      }
    }
    pool.shutdown();
    pool.awaitTermination(1, TimeUnit.DAYS);
    if (failure.get() != null) throw new IllegalStateException("the engine failed", failure.get());
  }

  private void validateOne(String text, String place) {
    try {
      JsonObject resource = JsonParser.parseString(text).getAsJsonObject();
      resources.addAndGet(1 + entries(resource));
      String type = resource.get("resourceType").getAsString();
      findings.add(place, type, validator.validateWithResult(text).getMessages());
    } catch (RuntimeException | StackOverflowError problem) {
      failure.compareAndSet(null, new IllegalStateException(place, problem));
    }
  }

  private static long entries(JsonObject resource) {
    if (!resource.has("entry") || !resource.get("entry").isJsonArray()) return 0;
    long count = 0;
    for (JsonElement entry : resource.getAsJsonArray("entry")) if (entry.getAsJsonObject().has("resource")) count++;
    return count;
  }
}
