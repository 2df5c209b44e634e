package org.neuroexam;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.context.support.IValidationSupport;
import ca.uhn.fhir.context.support.IValidationSupport.IssueSeverity;
import ca.uhn.fhir.parser.IParser;
import ca.uhn.fhir.parser.StrictErrorHandler;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.SnapshotGeneratingValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.UnknownCodeSystemWarningValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain.CacheConfiguration;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.CodeSystem;
import org.hl7.fhir.r4.model.CodeSystem.CodeSystemContentMode;
import org.hl7.fhir.r4.model.Enumerations.PublicationStatus;
import org.hl7.fhir.r4.model.Questionnaire;

/** What the engine knows: HL7's definitions of R4, the conformance resources of this project, and the codes that it uses. */
final class OwnDefinitions {
  /** The types in the folders that R4 defines; it has no ViewDefinition, and the JSON Schemas are no resources. */
  private static final Set<String> TYPES =
      Set.of("StructureDefinition", "CodeSystem", "ValueSet", "ConceptMap", "Questionnaire", "SearchParameter", "Measure");

  /** Tables of vocabularies that cannot be shipped whole. HL7's own code systems come with its definitions. */
  private static final List<String> TABLES = List.of("hpo.json", "loinc.json", "mondo.json", "uberon.json");

  /** Longer than any run: what was looked up once holds to the end. */
  private static final Duration WHOLE_RUN = Duration.ofHours(2);

  private OwnDefinitions() {}

  /** The files of conformance resources, which are named Type-id.json. */
  static List<Path> resourceFiles(Path project) throws IOException {
    List<Path> found = new ArrayList<>();
    for (String folder : List.of("profiles", "terminology")) {
      try (Stream<Path> files = Files.walk(project.resolve(folder))) {
        files.filter(OwnDefinitions::isResource).sorted().forEach(found::add);
      }
    }
    return found;
  }

  private static boolean isResource(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(".json") && TYPES.contains(name.split("-", 2)[0]);
  }

  // What says that a code system is unknown has no successor that says it as a warning.
  @SuppressWarnings("deprecation")
  static IValidationSupport supportFor(FhirContext context, Path project) throws IOException {
    PublishedResources own = new PublishedResources(context);
    IParser parser = context.newJsonParser().setParserErrorHandler(new StrictErrorHandler());
    for (Path file : resourceFiles(project)) {
      IBaseResource resource = parser.parseResource(Files.readString(file));
      own.addResource(resource);
      // The chain asks for value sets by their address, also for those that a form contains.
      if (resource instanceof Questionnaire form) form.getContained().forEach(own::addResource);
    }
    for (String table : TABLES) own.addResource(fragment(project.resolve("terminology/tables").resolve(table)));
    UnknownCodeSystemWarningValidationSupport unknownSystems = new UnknownCodeSystemWarningValidationSupport(context);
    unknownSystems.setNonExistentCodeSystemSeverity(IssueSeverity.WARNING);
    return new ValidationSupportChain(
            CacheConfiguration.defaultValues().setCacheSize(200_000).setCacheTimeout(WHOLE_RUN),
            new DefaultProfileValidationSupport(context),
            own,
            new CommonCodeSystemsTerminologyService(context),
            new InMemoryTerminologyServerValidationSupport(context),
            new SnapshotGeneratingValidationSupport(context),
            unknownSystems)
        // As R4 defines a binding of a CodeableConcept: one of its codings has to be in the value set, not each.
        .setCodeableConceptValidationSuccessfulIfNotAllCodingsAreValid(true);
  }

  /** A table as a fragment of its vocabulary, so that every code in use and its display are checked. */
  private static CodeSystem fragment(Path table) throws IOException {
    JsonObject vocabulary = JsonParser.parseString(Files.readString(table)).getAsJsonObject();
    CodeSystem system = new CodeSystem();
    system.setUrl(vocabulary.get("system").getAsString());
    system.setStatus(PublicationStatus.ACTIVE).setContent(CodeSystemContentMode.FRAGMENT).setCaseSensitive(true);
    for (JsonElement row : vocabulary.getAsJsonArray("codes")) {
      JsonObject code = row.getAsJsonObject();
      system.addConcept().setCode(code.get("code").getAsString()).setDisplay(code.get("display").getAsString());
    }
    return system;
  }
}
