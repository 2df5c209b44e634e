package org.neuroexam;

import ca.uhn.fhir.context.FhirContext;
import java.util.HashMap;
import java.util.Map;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.MetadataResource;

/** Resources by canonical address, with or without a version; the class above it gives profiles and vocabulary alone. */
final class PublishedResources extends PrePopulatedValidationSupport {
  private final Map<String, IBaseResource> byAddress = new HashMap<>();

  PublishedResources(FhirContext context) {
    super(context);
  }

  @Override
  public synchronized void addResource(IBaseResource resource) {
    super.addResource(resource);
    MetadataResource published = (MetadataResource) resource;
    byAddress.put(published.getUrl(), resource);
    byAddress.put(published.getUrl() + "|" + published.getVersion(), resource);
  }

  @Override
  public <T extends IBaseResource> T fetchResource(Class<T> type, String address) {
    IBaseResource found = byAddress.get(address);
    return type != null && type.isInstance(found) ? type.cast(found) : super.fetchResource(type, address);
  }
}
