package dev.drafting.knit;

import java.io.Serializable;

/** What is stored in place of a draft; reading it goes through the checks. */
record KeptDraft(Brief brief) implements Serializable {
  private static final long serialVersionUID = 1L;

  private Object readResolve() {
    return Draft.of(brief);
  }
}
