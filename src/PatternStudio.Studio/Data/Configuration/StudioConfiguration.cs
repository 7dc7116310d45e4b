using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class StudioConfiguration : IEntityTypeConfiguration<Studio>
{
    public void Configure(EntityTypeBuilder<Studio> studio)
    {
        studio.ToTable("Studios");
        studio.Property(it => it.Id).ValueGeneratedNever();
        studio.Property(it => it.Name).HasMaxLength(Studio.NameLength);
    }
}
